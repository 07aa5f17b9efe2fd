import type { Element } from "../pdfua/structure.js";
import type { Line, Rect, Text } from "./drawn.js";
import { type Sheet, chain, mm } from "./sheet.js";

/** A copy of a sheet whose drawing and tags can be broken without harm to the other. */
export function copyOf(sheet: Sheet): Sheet {
  const { pages, subject } = sheet;
  const copies = new Map(subject.elements.map((one) => [one, { ...one }]));
  const copied = (one: Element): Element => copies.get(one) ?? one;
  for (const one of copies.values()) {
    one.parent = one.parent && copied(one.parent);
    one.kids = one.kids.map(copied);
    one.content = one.content.map((part) => ({ ...part }));
  }
  const inks = <T extends { element: Element | undefined }>(list: readonly T[]): T[] =>
    list.map((one) => ({ ...one, element: one.element && copied(one.element) }));
  return {
    ...sheet,
    subject: { ...subject, elements: [...copies.values()] },
    pages: pages.map((page) => ({
      ...page,
      texts: inks(page.texts),
      lines: inks(page.lines),
      fills: inks(page.fills),
      frames: inks(page.frames),
    })),
  };
}

/** How to break each rule of layout: what is done to the drawing of a good sheet. */
export const breaks: Record<string, (sheet: Sheet) => void> = {
  "step text is 12 pt, 14 pt in large type": (sheet) => shrink(sheet, 11.9),
  "x-height of step text in large type, B612 with 0.550 em": (sheet) => {
    sheet.large = true;
    shrink(sheet, 13);
  },
  "no text under 10 pt": (sheet) => shrink(sheet, 9.9),
  "headings are at least 12 pt": (sheet) => shrink(sheet, 11),
  "leading is at least 1.25 of the size": (sheet) => texts(sheet, (text) => (text.base *= 0.95)),
  "two families, one of them for characters that the other lacks": (sheet) =>
    texts(sheet, (text, i) => (text.family = `family ${i % 3}`)),
  "at most two ways of emphasis in running text": (sheet) =>
    texts(sheet, (text, i) => (text.color = i % 2 ? "#9B2423" : "#000000")),
  "no long run of capitals": (sheet) =>
    texts(sheet, (text) => (text.text = "NOBODY READS SIX WORDS IN CAPITALS")),
  "no line in italics": (sheet) => texts(sheet, (text) => (text.italic = true)),
  "contrast of text": (sheet) => texts(sheet, (text) => (text.color = "#767676")),
  "text in white is short, large and bold": (sheet) =>
    texts(sheet, (text) => Object.assign(text, { color: "#FFFFFF", bold: false })),
  "contrast of boxes and of lines to write on": (sheet) =>
    lines(sheet, (line) => (line.color = "#C0C0C0")),
  "boxes are 6 mm": (sheet) => boxes(sheet, (box) => (box.w = 5 * mm)),
  "all boxes have one size": (sheet) => boxes(sheet, (box, i) => (box.w += i)),
  "a box stands immediately left of its item": (sheet) =>
    boxes(sheet, (box) => (box.x += 150 * mm)),
  "2 mm between boxes": (sheet) => boxes(sheet, (box) => Object.assign(box, { x: 100, y: 100 })),
  "rows to write in are 8.5 mm high": (sheet) => boxes(sheet, (box) => (box.h = 8 * mm)),
  "cells to write in are 12 mm wide": (sheet) => boxes(sheet, (box) => (box.w = 11 * mm)),
  "binding margin on the left": (sheet) => texts(sheet, (text) => (text.x -= 1)),
  "nothing beyond the right margin": (sheet) => texts(sheet, (text) => (text.right += 400)),
  "nothing within 6 mm of the upper or the lower edge": (sheet) =>
    texts(sheet, (text) => (text.base += 780)),
  "tagged text stays clear of head and foot": (sheet) => texts(sheet, (text) => (text.base += 760)),
  "no text lies over another": (sheet) =>
    texts(sheet, (text) => Object.assign(text, { x: 100, right: 150, base: 300 })),
  "no text runs over the edge of its cell": (sheet) => texts(sheet, (text) => (text.right += 400)),
  "a list of steps that goes on says so on both pages": silence,
  "a table that goes on shows its head again": silence,
  "a step and its messages stand on one page; its table of values may go on": (sheet) =>
    scatter(sheet, ({ type }) => type === "LBody"),
  "no heading is parted from what follows": (sheet) =>
    scatter(sheet, ({ type }) => /^H[1-6]$/.test(type)),
  "no line of a list stands alone before or after a page break": (sheet) =>
    scatter(sheet, ({ type }) => type === "LBody"),
  "a note stands on the last page of its table": (sheet) =>
    scatter(sheet, ({ type }) => type === "P"),
  "a page is at least a third full, unless the sheet ends": (sheet) => {
    texts(sheet, (text) => (text.base = 60));
    lines(sheet, (line) => Object.assign(line, { y: 60, y2: 60 }));
    boxes(sheet, (box) => (box.y = 60));
  },
  "a pause point asks at most nine things": (sheet) => {
    const box = sheet.subject.elements.find(({ type }) => type === "Form");
    for (const { type, kids } of sheet.subject.elements)
      if (type === "LBody" && box) kids.push(...Array<Element>(12).fill(box));
  },
  ...forLines("signatures", 40, 10),
  ...forLines("names", 34, 8),
  ...forLines("initials", 12, 8),
  ...forLines("readings", 20, 8),
};

function forLines(what: string, length: number, room: number): typeof breaks {
  return {
    [`lines for ${what} are ${length} mm long`]: (sheet) =>
      lines(sheet, (line) => (line.x2 = line.x + 5 * mm)),
    [`lines for ${what} have ${room} mm above them`]: (sheet) => {
      for (const page of sheet.pages)
        page.lines.push(...page.lines.map((line) => ({ ...line, y: line.y - 9, y2: line.y2 - 9 })));
    },
  };
}

function texts(sheet: Sheet, change: (text: Text, i: number) => void): void {
  sheet.pages.flatMap((page) => page.texts).forEach(change);
}

function lines(sheet: Sheet, change: (line: Line) => void): void {
  sheet.pages.flatMap((page) => page.lines).forEach(change);
}

function boxes(sheet: Sheet, change: (box: Rect, i: number) => void): void {
  sheet.pages.flatMap((page) => page.frames).forEach(change);
}

function shrink(sheet: Sheet, size: number): void {
  texts(sheet, (text) => (text.size = size));
}

/** Takes the marks and the heads that are shown again away. */
function silence({ pages }: Sheet): void {
  for (const page of pages) page.texts = page.texts.filter(({ element }) => element);
}

/** Moves every second piece that stands under some elements to the first page, which parts it from the rest. */
function scatter({ subject, pages }: Sheet, under: (element: Element) => boolean): void {
  const ref = pages[0]?.ref ?? "";
  const within = subject.elements.filter((one) => one.content.length > 0 && chain(one).some(under));
  for (const element of within.filter((_, i) => i % 2 === 1))
    if (element.content.some((one) => "page" in one && one.page !== ref))
      element.content = element.content.map((one) => ("page" in one ? { ...one, page: ref } : one));
}
