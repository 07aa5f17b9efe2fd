import { type Reader, readerOf } from "../pdfua/read.js";
import { dict, list, text } from "../pdfua/objects.js";
import type { Subject } from "../pdfua/rules/rule.js";
import type { Element } from "../pdfua/structure.js";
import { type Drawn, type Rect, type Text, drawnPages } from "./drawn.js";

/** Points to a millimetre. */
export const mm = 72 / 25.4;

/** What the rules of layout are measured on: a printed PDF, its drawing and its tags. */
export interface Sheet {
  subject: Subject;
  pages: Drawn[];
  read: Reader;
  large: boolean;
  /** What each page is called: its sheet, and its number in it. */
  labels: string[];
}

/** One thing measured, and where it stands. */
export interface Measured {
  where: string;
  value: number;
}

/** One rule: its source, the least or the most that is allowed, and how it is measured on the PDF. */
export interface Rule {
  name: string;
  source: string;
  unit: string;
  least?: number;
  most?: number;
  measure(sheet: Sheet): Measured[];
}

/** Prepares a PDF for measuring. */
export function sheetOf(subject: Subject, large: boolean): Sheet {
  const pages = drawnPages(subject);
  return { subject, pages, read: readerOf(subject), large, labels: labelsOf(subject, pages) };
}

/** What breaks a rule, with the value that was measured. */
export function against({ least, most, unit, measure }: Rule, sheet: Sheet): string[] {
  return measure(sheet)
    .filter(({ value }) => value < (least ?? -Infinity) - 0.01 || value > (most ?? Infinity) + 0.01)
    .map(({ where, value }) => `${named(sheet, where)}: ${value.toFixed(2)} ${unit}`);
}

function named({ labels }: Sheet, where: string): string {
  return where.replace(/^page (\d+)/, (_, n: string) => labels[Number(n) - 1] ?? n);
}

function labelsOf({ pdf, catalog }: Subject, pages: readonly Drawn[]): string[] {
  const numbers = list(pdf, dict(pdf, catalog["/PageLabels"])["/Nums"]);
  const labels: string[] = [];
  for (let k = 0; k + 1 < numbers.length; k += 2) {
    const [from, to] = [Number(numbers[k]), Number(numbers[k + 2] ?? pages.length)];
    const name = text(pdf, dict(pdf, numbers[k + 1])["/P"]) ?? "";
    for (let i = from; i < to; i++) labels.push(`${name}${i - from + 1}`);
  }
  return labels;
}

/** Measures each text that is set along the page; a watermark lies across it. */
export function eachText(
  sheet: Sheet,
  value: (text: Text, page: Drawn) => number | undefined,
): Measured[] {
  return sheet.pages.flatMap((page, i) =>
    page.texts
      .filter(({ level, text }) => level && text.trim() !== "")
      .flatMap((text) => {
        const found = value(text, page);
        return found === undefined ? [] : [{ where: at(i, text.text), value: found }];
      }),
  );
}

/** A place for a report. */
export function at(page: number, what: string): string {
  return `page ${page + 1}, '${what.trim().slice(0, 60)}'`;
}

/** The element and all above it. */
export function chain(element: Element | undefined): Element[] {
  return element ? [element, ...chain(element.parent)] : [];
}

/** A frame that is a field, and its page. */
export interface Framed {
  page: Drawn;
  i: number;
  box: Rect;
}

/** The boxes to tick; a box is drawn as a frame, its line half outside the path. */
export function boxesOf(sheet: Sheet): Framed[] {
  return framesOf(sheet, "/cb");
}

/** The cells of tables that are left empty to be written in. */
export function cellsOf(sheet: Sheet): Framed[] {
  return framesOf(sheet, "/tv");
}

/** The frames that are printed fields of a role (ISO 32000-1 table 348). */
function framesOf({ pages, subject: { pdf } }: Sheet, role: string): Framed[] {
  const roleOf = ({ ref }: Element): unknown => dict(pdf, dict(pdf, ref)["/A"])["/Role"];
  return pages.flatMap((page, i) =>
    page.frames
      .filter(({ element }) => element?.type === "Form" && roleOf(element) === role)
      .map((box) => ({ page, i, box })),
  );
}

/** The numbers of the pages on which an element and all below it stand. */
export function pagesUnder(sheet: Sheet, element: Element): number[] {
  const own = element.content.flatMap((one) =>
    "page" in one ? [sheet.pages.findIndex(({ ref }) => ref === one.page)] : [],
  );
  const all = [...own, ...element.kids.flatMap((kid) => pagesUnder(sheet, kid))];
  return [...new Set(all)].toSorted((a, b) => a - b);
}

/** Whether an element holds a step of the checklist: a paragraph of it is the step's number. */
export function isStep({ read }: Sheet, { type, kids }: Element): boolean {
  return type === "LBody" && kids.some((kid) => /^[\d.]+$/.test(read(kid)));
}

/** Texts joined into lines: those of one element with one baseline. */
export function linesOf({ texts }: Drawn): Text[] {
  const lines: Text[] = [];
  for (const text of texts.filter(({ level }) => level)) {
    const last = lines.at(-1);
    const goesOn =
      last &&
      last.element === text.element &&
      Math.abs(last.base - text.base) < 0.1 &&
      text.x >= last.right - 1;
    if (goesOn) {
      last.text += text.text;
      last.right = text.right;
      last.size = Math.max(last.size, text.size);
    } else lines.push({ ...text });
  }
  return lines;
}
