import { type Dict, dict, list, pagesOf, text } from "../objects.js";
import { type Check, type Rules, type Subject, unless } from "./rule.js";
import { hasLanguage } from "./file.js";

/** Clauses 7.11 and 7.18: files inside the file, and fields that are filled in on a screen. */
export const fieldRules: Rules = {
  "7.2-24": (subject) =>
    unless(
      hasLanguage(subject) || annotations(subject).every((one) => one["/Contents"] === undefined),
      "what an annotation says is in no known language",
    ),
  "7.2-25": (subject) =>
    unless(
      hasLanguage(subject) || subject.dicts.every((one) => one["/TU"] === undefined),
      "the name of a field is in no known language",
    ),
  "7.11-1": ({ pdf, dicts }) =>
    dicts
      .filter((one) => one["/EF"] !== undefined)
      .filter((one) => !text(pdf, one["/F"]) || !text(pdf, one["/UF"]))
      .map(() => "an embedded file has no name"),
  "7.18.1-1": onAnnotations((subject, one) => {
    const free = ["/Widget", "/PrinterMark", "/Link"].includes(String(one["/Subtype"]));
    return free || parentType(subject, one) === "Annot" ? undefined : "stands in no Annot";
  }),
  "7.18.1-2": onAnnotations((subject, one) =>
    one["/Subtype"] === "/Widget" || says(subject, one, "/Contents") ? undefined : "says nothing",
  ),
  "7.18.1-3": onWidgets((subject, one) =>
    says(subject, one, "/TU") ? undefined : "a field without a name",
  ),
  "7.18.3-1": ({ pdf }) =>
    pagesOf(pdf).flatMap((page) => {
      const annotated = list(pdf, page.dict["/Annots"]).length > 0;
      return unless(!annotated || page.dict["/Tabs"] === "/S", `page ${page.ref}: other tab order`);
    }),
  "7.18.4-1": onWidgets((subject, one) =>
    parentType(subject, one) === "Form" ? undefined : "a field outside a Form",
  ),
  "7.18.5-1": onLinks((subject, one) =>
    parentType(subject, one) === "Link" ? undefined : "a link outside a Link",
  ),
  "7.18.5-2": onLinks((subject, one) =>
    text(subject.pdf, one["/Contents"]) ? undefined : "a link that says nothing",
  ),
};

type Bad = (subject: Subject, annotation: Dict) => string | undefined;

/** The annotations of all pages that are not hidden. */
export function annotations({ pdf }: Subject): Dict[] {
  return pagesOf(pdf)
    .flatMap((page) => list(pdf, page.dict["/Annots"]))
    .map((one) => dict(pdf, one))
    .filter((one) => (Number(one["/F"] ?? 0) & 2) === 0);
}

function onAnnotations(bad: Bad, subtype?: string): Check {
  return (subject) =>
    annotations(subject)
      .filter((one) => subtype === undefined || one["/Subtype"] === subtype)
      .flatMap((one) => bad(subject, one) ?? []);
}

function onWidgets(bad: Bad): Check {
  return onAnnotations(bad, "/Widget");
}

function onLinks(bad: Bad): Check {
  return onAnnotations(bad, "/Link");
}

/** The type of the element on which an annotation hangs. */
function parentType({ pdf, elements }: Subject, annotation: Dict): string | undefined {
  return elements.find(({ content }) =>
    content.some((one) => "object" in one && dict(pdf, one.object) === annotation),
  )?.type;
}

function says({ pdf, elements }: Subject, annotation: Dict, entry: string): boolean {
  const above = dict(pdf, annotation["/Parent"]);
  const element = elements.find(({ content }) =>
    content.some((one) => "object" in one && dict(pdf, one.object) === annotation),
  );
  return [annotation[entry], above[entry], element?.dict["/Alt"]].some((one) => text(pdf, one));
}
