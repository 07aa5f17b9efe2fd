import Handlebars from "handlebars";
import { markOf, textOf } from "../figures/format.js";
import type { Figure } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";

type Marked = readonly { text: string; mark: string }[];

/** Escapes a text for HTML. */
export function escape(text: string): string {
  return Handlebars.escapeExpression(text);
}

/** The text kept on one line. */
export function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00A0");
}

/** Stands for the spoken name of a value to write in, until the language is known. */
const value = "{value}";

/** Text as HTML: each figure followed by its source mark, each size kept on one line, each run of underscores a line to write on. */
export function marked(text: string, figures: Marked): string {
  const html = figures.reduce((done, figure) => {
    const shown = escape(figure.text);
    return done.replace(shown, () => `${shown}${markHtml(figure.mark)}`);
  }, escape(text));
  let lines = 0;
  const whole = html.replaceAll(/(?<=\d) × (?=\d)/g, unbroken);
  return whole.replaceAll(/_{3,}/g, () => {
    const name = ++lines === 1 ? value : `${value} ${lines}`;
    return `<span class="blank figure" aria-label="${name}"></span>`;
  });
}

/** The letter that says where a figure comes from, set apart so that nobody reads it as a unit. */
export function markHtml(mark: string): string {
  return `<sup>(${mark})</sup>`;
}

/** The sentence of a step with its number. */
export function saidOf({ n, says, figures }: Step): { n: string; saysHtml: string } {
  return { n, saysHtml: marked(says, figures) };
}

/** A figure as HTML, with its mark. */
export function figureHtml(figure: Figure, words: Words): string {
  return `${marked(textOf(figure, words), [])}${markHtml(markOf(figure.source))}`;
}

/** Whether a text has a line to write on. */
export function hasBlank(text: string): boolean {
  return text.includes("___");
}

/** The text with three points for each line to write on. */
export function withoutBlanks(text: string): string {
  return text.replaceAll(/_{3,}/g, "…");
}

/** Text as HTML without lines to write on: a value is written once, on the checklist. */
export function markedUnwritten(text: string, figures: Marked): string {
  const printed = figures.filter((figure) => !hasBlank(figure.text));
  return marked(withoutBlanks(text), printed);
}

/** The sentence of a step with its number, without lines to write on. */
export function saidUnwritten({ n, says, figures }: Step): { n: string; saysHtml: string } {
  return { n, saysHtml: markedUnwritten(says, figures) };
}

/** The HTML with the values to write in named in the language's words. */
export function withValuesNamed(html: string, name: string): string {
  return html.replaceAll(`aria-label="${value}`, () => `aria-label="${escape(name)}`);
}
