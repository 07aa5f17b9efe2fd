import { dict, text } from "../../pdfua/objects.js";
import type { Drawn, Line } from "../drawn.js";
import { type Rule, type Sheet, at, boxesOf, cellsOf, chain, linesOf, mm } from "../sheet.js";

/** Boxes to tick, and cells to write in: size and distance. */
const boxRules: readonly Rule[] = [
  {
    name: "boxes are 6 mm",
    source: "form-scanning guides 4 to 10 mm (C5.1), 6 mm ours for gloves",
    unit: "mm",
    least: 6,
    measure: (sheet) =>
      boxesOf(sheet).map(({ i, box }) => ({
        where: at(i, "box"),
        value: (Math.min(box.w, box.h) + box.width) / mm,
      })),
  },
  {
    name: "all boxes have one size",
    source: "government forms standard (C5.4)",
    unit: "sizes",
    most: 1,
    measure: (sheet) => [
      {
        where: "the whole",
        value: new Set(boxesOf(sheet).map(({ box }) => box.w.toFixed(1))).size,
      },
    ],
  },
  {
    name: "a box stands immediately left of its item",
    source: "government forms standard (C5.4), gap under 40 mm (C1 3.7)",
    unit: "mm to the item",
    most: 12,
    measure: (sheet) =>
      boxesOf(sheet)
        .filter(({ box }) => !chain(box.element).some(({ type }) => type === "TD"))
        .map(({ page, i, box }) => ({
          where: at(i, "box"),
          value: (itemRightOf(page, box) - box.x - box.w) / mm,
        })),
  },
  {
    name: "2 mm between boxes",
    source: "form-recognition help page (C5.2)",
    unit: "mm",
    least: 2,
    measure: (sheet) =>
      boxesOf(sheet).flatMap(({ page, i, box }, k, all) =>
        all
          .slice(k + 1)
          .filter((other) => other.page === page)
          .map(({ box: other }) => ({
            where: at(i, "box"),
            value:
              Math.max(gap(box.x, box.w, other.x, other.w), gap(box.y, box.h, other.y, other.h)) /
              mm,
          })),
      ),
  },
  {
    name: "rows to write in are 8.5 mm high",
    source: "government forms practice, 1/3 in (C5.8)",
    unit: "mm",
    least: 8.4,
    measure: (sheet) =>
      cellsOf(sheet).map(({ i, box }) => ({ where: at(i, "cell"), value: box.h / mm })),
  },
  {
    name: "cells to write in are 12 mm wide",
    source: "size of initials, ours (C5.8)",
    unit: "mm",
    least: 12,
    measure: (sheet) =>
      cellsOf(sheet).map(({ i, box }) => ({ where: at(i, "cell"), value: box.w / mm })),
  },
];

/** Boxes to tick and lines to write on: size, room, and distance. */
export const fieldRules: readonly Rule[] = [
  ...boxRules,
  ...lines("signatures", /signature/, 40, 10),
  ...lines("names", /name of|by$|counted with/, 34, 8),
  ...lines("initials", /initials/, 12, 8),
  ...lines("readings", /\((mm|V|A|kPa|bar|°|Ω|ohm)\)|value/, 20, 8),
];

/** Two rules for the lines whose spoken name fits: how long they are, how much room is above them. */
function lines(what: string, name: RegExp, length: number, room: number): Rule[] {
  const chosen = (sheet: Sheet) =>
    sheet.pages.flatMap((page, i) =>
      page.lines
        .map((line) => ({ page, i, line, name: spoken(sheet, line) }))
        .filter((one) => name.test(one.name)),
    );
  const source = "sizes ours (C5.8)";
  return [
    {
      name: `lines for ${what} are ${length} mm long`,
      source,
      unit: "mm",
      least: length,
      measure: (sheet) =>
        chosen(sheet).map(({ i, line, name: said }) => ({
          where: at(i, said),
          value: (line.x2 - line.x) / mm,
        })),
    },
    {
      name: `lines for ${what} have ${room} mm above them`,
      source,
      unit: "mm",
      least: room,
      measure: (sheet) =>
        chosen(sheet).map(({ page, i, line, name: said }) => ({
          where: at(i, said),
          value: roomAbove(page, line) / mm,
        })),
    },
  ];
}

/** The spoken name of the field that a line is drawn for. */
function spoken({ subject: { pdf } }: Sheet, { element }: Line): string {
  if (element?.type !== "Form") return "";
  return text(pdf, dict(pdf, element.ref)["/Alt"]) ?? "";
}

function gap(a: number, length: number, b: number, other: number): number {
  return Math.max(a, b) - Math.min(a + length, b + other);
}

/** Where the nearest text right of a box begins that is on its height. */
function itemRightOf(page: Drawn, box: { x: number; y: number; w: number; h: number }): number {
  const beside = linesOf(page).filter(
    ({ x, base, size }) =>
      x > box.x + box.w && base > box.y && base - size * 0.7 < box.y + box.h + size,
  );
  return Math.min(Infinity, ...beside.map(({ x }) => x));
}

/** From a line up to the nearest text, line or box above it. */
function roomAbove(page: Drawn, line: Line): number {
  const over = (x: number, right: number): boolean => x < line.x2 - 1 && right > line.x + 1;
  const inks = [
    ...linesOf(page)
      .filter(({ x, right }) => over(x, right))
      .map(({ base, size }) => base + size * 0.2),
    ...page.lines.filter(({ x, x2 }) => over(x, x2)).map(({ y, y2 }) => Math.max(y, y2)),
    ...page.frames.filter(({ x, w }) => over(x, x + w)).map(({ y, h }) => y + h),
  ];
  return line.y - Math.max(0, ...inks.filter((y) => y < line.y - 0.5));
}
