import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fill } from "../../src/fill/fill.js";
import { sheets } from "../../src/fill/sheets.js";
import { textsOf } from "../../src/fill/texts.js";
import { layout } from "../../src/layout/layout.js";
import type { Words } from "../../src/model/words.js";
import { countback } from "../countback.js";
import { inputOf, repairs } from "./filled.js";

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

/** All texts of a value; what only names a kind of thing is none. */
function textsIn(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
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

describe.each(repairs.slice(0, 2))(
  "a made-up language, two fifths longer, on $name",
  ({ plan }) => {
    const input = inputOf(plan);
    const applying = sheets.filter((sheet) => sheet.applies(input));
    const own = JSON.stringify(plan);
    const ownWords = new Set(
      textsIn(plan)
        .join(" ")
        .match(/[A-Za-z]+/g),
    );
    const long = Object.keys(english.texts).filter(
      (text) => text.split(" ").length > 2 && !own.includes(text),
    );

    it.each(applying.map((sheet) => [sheet.name, sheet] as const))(
      "%s: no English is stuck in it, and it lays out",
      (_, sheet) => {
        const html = fill(sheet, input, made);
        expect(html).toContain('lang="zxx"');
        expect(long.filter((text) => html.includes(text))).toEqual([]);
        expect(plainWords(html).filter((word) => !ownWords.has(word))).toEqual([]);
        const { value, diagnostics } = layout(html, css, "a4");
        expect(diagnostics).toEqual([]);
        const wide = value?.pages.flatMap(({ items }) =>
          items.filter((item) => item.is === "text" && item.x > value.width - 14),
        );
        expect(wide).toEqual([]);
      },
    );
  },
);

it("a language that is not there is refused, with those that are", () => {
  const { code, stderr } = countback(["print", "carpet", "--language", "xx"]);
  expect(code).toBe(2);
  expect(stderr).toContain("there is no language 'xx'; languages: en");
});
