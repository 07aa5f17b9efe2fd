import { dict, text } from "../objects.js";
import { type Rules, type Subject, unless } from "./rule.js";

const languageTag = /^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/;

/** Clauses 5, 6 and the part of 7 that ask the file as a whole: what it says of itself. */
export const fileRules: Rules = {
  "5-1": ({ xmp }) => unless(/pdfuaid:part/.test(xmp), "the metadata does not name PDF/UA"),
  "5-2": ({ xmp }) =>
    unless(/<pdfuaid:part>1<\/pdfuaid:part>|pdfuaid:part="1"/.test(xmp), "the part named is not 1"),
  "5-3": ({ xmp }) => prefixes(xmp, "part"),
  "5-4": ({ xmp }) => prefixes(xmp, "amd"),
  "5-5": ({ xmp }) => prefixes(xmp, "corr"),
  "6.1-1": ({ pdf }) => unless(/^%PDF-1\.[0-7]$/.test(pdf.header), `header ${pdf.header}`),
  "6.2-1": ({ pdf, catalog }) =>
    unless(dict(pdf, catalog["/MarkInfo"])["/Marked"] === true, "the file is not marked"),
  "7.1-4": ({ pdf, catalog }) =>
    unless(dict(pdf, catalog["/MarkInfo"])["/Suspects"] !== true, "tags are suspect"),
  "7.1-8": ({ xmp }) => unless(xmp !== "", "no metadata"),
  "7.1-9": ({ xmp }) => unless(titleOf(xmp) !== "", "the metadata has no title"),
  "7.1-10": ({ pdf, catalog }) =>
    unless(
      dict(pdf, catalog["/ViewerPreferences"])["/DisplayDocTitle"] === true,
      "a window would show the file's name",
    ),
  "7.1-11": ({ catalog }) => unless(catalog["/StructTreeRoot"] !== undefined, "no structure tree"),
  "7.2-2": (subject) => spoken(subject, subject.catalog["/Outlines"] !== undefined, "bookmarks"),
  "7.2-29": ({ pdf, dicts }) =>
    dicts
      .filter((one) => one["/Lang"] !== undefined)
      .map((one) => text(pdf, one["/Lang"]) ?? "")
      .filter((lang) => !languageTag.test(lang))
      .map((lang) => `'${lang}' is no language`),
  "7.2-33": (subject) => spoken(subject, /xml:lang="x-default"/.test(subject.xmp), "metadata"),
};

/** The title in the metadata, as XML holds it. */
export function titleOf(xmp: string): string {
  return /<dc:title>[\s\S]*?<rdf:li[^>]*>([^<]*)<\/rdf:li>/.exec(xmp)?.[1]?.trim() ?? "";
}

/** Whether the catalog gives a language for what has none of its own. */
export function hasLanguage({ pdf, catalog }: Subject): boolean {
  return (text(pdf, catalog["/Lang"]) ?? "") !== "";
}

function spoken(subject: Subject, needed: boolean, what: string): string[] {
  return unless(!needed || hasLanguage(subject), `${what} in no known language`);
}

function prefixes(xmp: string, name: string): string[] {
  const space = /xmlns:(\w+)="http:\/\/www\.aiim\.org\/pdfua\/ns\/id\/"/.exec(xmp)?.[1];
  const used = space !== undefined && new RegExp(`\\b${space}:${name}\\b`).test(xmp);
  return unless(!used || space === "pdfuaid", `${name} has the prefix ${space}`);
}
