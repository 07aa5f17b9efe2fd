import type { Drawn, Text } from "../drawn.js";
import { type Measured, type Rule, type Sheet, at, linesOf, mm } from "../sheet.js";

/** Where things stand on the page: margins, overlaps, cells. */
export const placeRules: readonly Rule[] = [
  {
    name: "binding margin on the left",
    source: "CAP 676 ch. 7 (C3.6): 20 mm ours",
    unit: "mm",
    least: 20,
    measure: (sheet) => [...texts(sheet, ({ x }) => x / mm), ...lines(sheet, (x) => x / mm)],
  },
  {
    name: "nothing beyond the right margin",
    source: "ours: sheet.css, 14 mm",
    unit: "mm",
    least: 14,
    measure: (sheet) => [
      ...texts(sheet, ({ right }, page) => (page.width - right) / mm),
      ...lines(sheet, (_, x2, page) => (page.width - x2) / mm),
    ],
  },
  {
    name: "nothing within 6 mm of the upper or the lower edge",
    source: "ours: what printers leave white",
    unit: "mm",
    least: 6,
    measure: (sheet) => [
      ...texts(sheet, ({ base, size }) => (base - size * 0.76) / mm),
      ...texts(sheet, ({ base, size }, page) => (page.height - base - size * 0.25) / mm),
    ],
  },
  {
    name: "tagged text stays clear of head and foot",
    source: "ours: sheet.css, 19 mm",
    unit: "mm",
    least: 19,
    measure: (sheet) => [
      ...texts(sheet, ({ element, base, size }) =>
        element ? (base - size * 0.76) / mm : undefined,
      ),
      ...texts(sheet, ({ element, base, size }, page) =>
        element ? (page.height - base - size * 0.24) / mm : undefined,
      ),
    ],
  },
  {
    name: "no text lies over another",
    source: "issue 4.4: fits at the longest text of the library",
    unit: "pt shared",
    most: 0.5,
    measure: ({ pages }) =>
      pages.flatMap((page, i) => {
        const all = linesOf(page);
        return all.map((one, k) => ({
          where: at(i, one.text),
          value: Math.max(0, ...all.slice(k + 1).map((other) => shared(one, other))),
        }));
      }),
  },
  {
    name: "no text runs over the edge of its cell",
    source: "issue 4.4: the sheet fits its cells at the longest text",
    unit: "edges",
    most: 0,
    measure: ({ pages }) =>
      pages.flatMap((page, i) =>
        linesOf(page).map((text) => ({ where: at(i, text.text), value: edgesWithin(page, text) })),
      ),
  },
];

function texts(sheet: Sheet, value: (text: Text, page: Drawn) => number | undefined): Measured[] {
  return sheet.pages.flatMap((page, i) =>
    linesOf(page).flatMap((text) => {
      const found = text.text.trim() === "" ? undefined : value(text, page);
      return found === undefined ? [] : [{ where: at(i, text.text), value: found }];
    }),
  );
}

function lines(sheet: Sheet, value: (x: number, x2: number, page: Drawn) => number): Measured[] {
  return sheet.pages.flatMap((page, i) => [
    ...page.lines.map(({ x, x2 }) => ({ where: at(i, "line"), value: value(x, x2, page) })),
    ...[...page.frames, ...page.fills].map(({ x, w }) => ({
      where: at(i, "box"),
      value: value(x, x + w, page),
    })),
  ]);
}

/** How much of two texts lies over each other, from the top of small letters to the baseline. */
function shared(a: Text, b: Text): number {
  const across = Math.min(a.right, b.right) - Math.max(a.x, b.x);
  const down = Math.min(a.base, b.base) - Math.max(a.base - a.size * 0.55, b.base - b.size * 0.55);
  return Math.max(0, Math.min(across, down));
}

/** Upright lines that cut through a text. */
function edgesWithin({ lines: all }: Drawn, { x, right, base, size }: Text): number {
  return all.filter(
    (line) =>
      Math.abs(line.x - line.x2) < 0.1 &&
      line.x > x + 0.5 &&
      line.x < right - 0.5 &&
      Math.min(line.y, line.y2) < base - size * 0.2 &&
      Math.max(line.y, line.y2) > base - size * 0.4,
  ).length;
}
