import { readFileSync, readdirSync } from "node:fs";
import Handlebars from "handlebars";
import type { Words } from "../model/words.js";
import { translated } from "./texts.js";
import { withValuesNamed } from "./marks.js";
import type { Sheet, SheetInput } from "./sheet.js";

const folder = new URL("../../templates/", import.meta.url);
const alertMarks: Record<string, string> = {
  danger: "#FFFFFF",
  warning: "#D05D29",
  caution: "#F9A800",
};

/** Fills a sheet's template: a plan becomes the HTML of one sheet. */
export function fill(sheet: Sheet, input: SheetInput, words: Words): string {
  const html = engine(words)(sheet.template?.(input) ?? sheet.name)({
    ...sheet.view(input, words),
    phrases: words.phrases,
    lang: words.language,
  });
  return withValuesNamed(html, words.phrases["value"] ?? "");
}

type Template = (view: object) => string;

function engine({ texts, phrases }: Words): (name: string) => Template {
  const handlebars = Handlebars.create();
  handlebars.registerHelper("is", (a: unknown, b: unknown) => a === b);
  handlebars.registerHelper("add", (a: number, b: number) => a + b);
  handlebars.registerHelper("range", (count: number) => Array.from({ length: count }, (_, i) => i));
  handlebars.registerHelper("phrase", (name: string) => phrases[name] ?? name);
  handlebars.registerHelper("upper", (text: string) => text.toUpperCase());
  handlebars.registerHelper("alertMark", (word: string) => alertMarks[word] ?? "#FFFFFF");
  for (const file of readdirSync(new URL("parts/", folder)).sort()) {
    handlebars.registerPartial(
      file.replace(/\.hbs$/, ""),
      translated(text(`parts/${file}`), texts),
    );
  }
  return (name) => handlebars.compile(translated(text(`${name}.hbs`), texts));
}

function text(file: string): string {
  return readFileSync(new URL(file, folder), "utf8");
}
