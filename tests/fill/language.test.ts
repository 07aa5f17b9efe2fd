import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fill } from "../../src/fill/fill.js";
import { sheets } from "../../src/fill/sheets.js";
import { textsOf } from "../../src/fill/texts.js";
import { layout } from "../../src/layout/layout.js";
import type { Words } from "../../src/model/words.js";
import { figures } from "../../src/figures/figures.js";
import { type PlanFile, plan } from "../../src/index.js";
import { countback } from "../countback.js";
import { jobsOf, opened, own } from "../plans.js";
import { inputOf } from "./filled.js";

const english = parse(readFileSync("templates/words.en.yaml", "utf8")) as Words;
const css = { text: readFileSync("templates/sheet.css", "utf8"), file: "sheet.css" };
const accents: Record<string, string> = {
  a: "â",
  e: "é",
  i: "î",
  o: "ö",
  u: "û",
  A: "Â",
  E: "É",
  O: "Ö",
};

/** Words of a made-up language: every vowel accented, and two fifths longer; places to fill in stay. */
function strange(text: string): string {
  const accented = text.replaceAll(/\{[^}]*\}|[aeiouAEO]/g, (part) => accents[part] ?? part);
  const letters = text.replaceAll(/\{[^}]*\}/g, "").length;
  const more = Array.from({ length: Math.ceil((letters * 0.4) / 5) }, () => "ýçñł").join(" ");
  return letters < 3 ? accented : `${accented} ${more}`;
}

function strangeAll<T>(value: T): T {
  if (typeof value === "string") return strange(value) as T;
  const entries = Object.entries(value as object).map(([key, one]) => [key, strangeAll(one)]);
  return Object.fromEntries(entries) as T;
}

/** The words that are read or spoken in a sheet and have a vowel without an accent. */
function plainWords(html: string): string[] {
  const spoken = [...html.matchAll(/ (?:aria-label|data-(?!tag)[a-z-]+|title)="([^"]*)"/g)];
  const read = [html.replaceAll(/<[^>]*>/g, " "), ...spoken.map(([, text = ""]) => text)];
  const text = read.join(" ").replaceAll(/&[a-z#\d]+;|\{[a-z]+\}/gi, " ");
  const words = new Set(text.match(/\p{L}+/gu));
  return [...words].filter((word) => /^[A-Za-z]{2,}$/.test(word) && /[aeiou]/.test(word));
}

const made: Words = { ...strangeAll(english), language: "zxx" };

it("the words file holds every word of every template, and no other", () => {
  const templates = readdirSync("templates", { recursive: true, encoding: "utf8" });
  const all = templates
    .filter((name) => name.endsWith(".hbs"))
    .flatMap((name) => textsOf(readFileSync(`templates/${name}`, "utf8")));
  expect(all.length).toBeGreaterThan(300);
  expect(Object.keys(english.texts).sort()).toEqual([...new Set(all)].sort());
});

it("the words file holds all that the figures say of themselves, and no other", () => {
  const told = figures.flatMap(({ about, formula, source, inputs }) => [
    about,
    formula,
    source,
    ...Object.entries(inputs).flatMap(([name, { takes }]) => [
      name,
      ...(takes.includes(" | ") ? takes.split(" | ") : []),
    ]),
  ]);
  const texts = told.filter((text) => /\p{L}{2}/u.test(text));
  expect(Object.keys(english.figures).sort()).toEqual([...new Set(texts)].sort());
});

const library = opened(own);

/** The words of the library's own recipes and cars, which are in the language of whoever wrote them. */
const ownText = library.sources.map(({ text }) => text).join(" ");
const ownWords = new Set(ownText.match(/[A-Za-z]+/g));

/** The repairs of the library on their first car, planned in the made-up language. */
const repairs: { name: string; made: PlanFile }[] = jobsOf(library)
  .filter(({ name }) => /^(seat-crossmember|floor-pan-section) on/.test(name))
  .slice(0, 2)
  .map(({ name, ask }) => {
    const { value, diagnostics } = plan({ ...library, words: made }, ask);
    if (!value) throw new Error(diagnostics.map(({ message }) => message).join("\n"));
    return { name, made: value };
  });

describe.each(repairs)("a made-up language, two fifths longer, on $name", ({ made: plan }) => {
  const input = inputOf(plan);
  const applying = sheets.filter((sheet) => sheet.applies(input));
  const long = Object.keys(english.texts).filter(
    (text) => text.split(" ").length > 2 && !ownText.includes(text),
  );

  it("the plan itself holds no English but that of the library", () => {
    const { steps, brief } = plan;
    const said = [
      ...steps.flatMap(({ says, note = "", wait, checks, figures: numbers, hold }) => [
        says,
        note,
        wait,
        ...checks,
        ...numbers.map(({ text }) => text),
        hold?.accept ?? "",
      ]),
      ...brief.sources.map(({ words }) => words),
    ];
    const plain = said.flatMap(plainWords).filter((word) => !ownWords.has(word));
    expect(plain).toEqual([]);
  });

  it("a range between two numbers has the language's own word", () => {
    const texts = JSON.stringify(applying.map((sheet) => fill(sheet, input, made)));
    expect(texts).toMatch(new RegExp(`\\d ${made.phrases["to"]} \\d`));
    const stuck = texts.match(/\d to \d+/g)?.filter((range) => !ownText.includes(range)) ?? [];
    expect(stuck).toEqual([]);
  });

  it.each(applying.map((sheet) => [sheet.name, sheet] as const))(
    "%s: no English is stuck in it, and it lays out",
    (_, sheet) => {
      const html = fill(sheet, input, made);
      expect(html).toContain('lang="zxx"');
      expect(long.filter((text) => html.includes(text))).toEqual([]);
      const known = new Set([...ownWords, ...(input.revision.match(/[a-z]+/g) ?? [])]);
      expect(plainWords(html).filter((word) => !known.has(word))).toEqual([]);
      const { value, diagnostics } = layout(html, css, "a4");
      expect(diagnostics).toEqual([]);
      const wide = value?.pages.flatMap(({ items }) =>
        items.filter((item) => item.is === "text" && item.x > value.width - 14),
      );
      expect(wide).toEqual([]);
    },
    30_000,
  );
});

it("a language that is not there is refused, with those that are", () => {
  const { code, stderr } = countback(["print", "carpet", "--language", "xx"]);
  expect(code).toBe(2);
  expect(stderr).toContain("there is no language 'xx'; languages: en");
});
