import type { Element } from "../../pdfua/structure.js";
import type { Drawn } from "../drawn.js";
import {
  type Measured,
  type Rule,
  type Sheet,
  at,
  chain,
  isStep,
  linesOf,
  mm,
  pagesUnder,
} from "../sheet.js";

/** How the sheet is cut into pages. */
export const flowRules: readonly Rule[] = [
  {
    name: "a list of steps that goes on says so on both pages",
    source: "aviation checklists (C3.9)",
    unit: "marks",
    least: 2,
    measure: (sheet) =>
      cuts(sheet, "L", (list) => below(list).some((one) => isStep(sheet, one))).map(({ i }) => ({
        where: at(i, "foot"),
        value:
          Number(says(sheet.pages[i], /goes on, sheet \d+/)) +
          Number(says(sheet.pages[i + 1], /\(continued\)/)),
      })),
  },
  {
    name: "a table that goes on shows its head again",
    source: "aviation checklists (C3.9)",
    unit: "heads",
    least: 1,
    measure: (sheet) =>
      cuts(sheet, "Table").map(({ i, element }) => {
        const heads = element.kids.filter(({ type }) => type === "THead");
        const words = heads.map((head) => sheet.read(head)).join(" ");
        const again = sheet.pages[i + 1]?.texts.filter((text) => !text.element) ?? [];
        const shown = unspaced(again.map(({ text }) => text).join(""));
        return { where: at(i + 1, words), value: Number(shown.includes(unspaced(words))) };
      }),
  },
  {
    name: "a step and its messages stand on one page; its table of values may go on",
    source: "MIL-STD-38784, keep with next (B1.15)",
    unit: "pages",
    most: 1,
    measure: (sheet) =>
      sheet.subject.elements
        .filter(({ type, parent }) => type === "LBody" && parent?.type === "LI")
        .map((element) => ({
          where: sheet.read(element).slice(0, 60),
          value: new Set(
            element.kids
              .filter(({ type }) => type !== "Table")
              .flatMap((kid) => pagesUnder(sheet, kid)),
          ).size,
        })),
  },
  {
    name: "no heading is parted from what follows",
    source: "issue 4.4",
    unit: "pages between",
    most: 0,
    measure: headingGaps,
  },
  {
    name: "no line of a list stands alone before or after a page break",
    source: "typography: no widows, no orphans",
    unit: "lines of the list",
    least: 2,
    measure: listEnds,
  },
  {
    name: "a note stands on the last page of its table",
    source: "MIL-STD-38784, keep with next (B1.15)",
    unit: "pages between",
    most: 0,
    measure: noteGaps,
  },
  {
    name: "a page is at least a third full, unless the sheet ends",
    source: "issue 4.4",
    unit: "of the page",
    least: 1 / 3,
    measure: (sheet) =>
      sheet.pages.flatMap((page, i) =>
        endsHere(sheet, i) ? [] : [{ where: at(i, "fill"), value: fillOf(page) }],
      ),
  },
  {
    name: "a pause point asks at most nine things",
    source: "surgical checklists: fewer than ten (C4.1)",
    unit: "checks",
    most: 9,
    measure: (sheet) =>
      sheet.subject.elements
        .filter(
          (element) => element.type === "LBody" && sheet.read(element).startsWith("Pause point"),
        )
        .map((element) => ({
          where: sheet.read(element).slice(0, 60),
          value: below(element).filter(({ type }) => type === "Form").length - 3,
        })),
  },
];

function unspaced(text: string): string {
  return text.replaceAll(/\s+/g, "");
}

function says(page: Drawn | undefined, words: RegExp): boolean {
  const decoration = page?.texts.filter(({ element }) => !element) ?? [];
  return words.test(
    decoration
      .map(({ text }) => text)
      .join("")
      .replaceAll(/\s+/g, " "),
  );
}

/** The page breaks within elements of a type. */
function cuts(
  sheet: Sheet,
  type: string,
  wanted: (element: Element) => boolean = () => true,
): { i: number; element: Element }[] {
  return sheet.subject.elements
    .filter((one) => one.type === type && wanted(one))
    .flatMap((element) =>
      pagesUnder(sheet, element)
        .slice(0, -1)
        .map((i) => ({ i, element })),
    );
}

function below(element: Element): Element[] {
  return [element, ...element.kids.flatMap(below)];
}

function headingGaps(sheet: Sheet): Measured[] {
  const { elements } = sheet.subject;
  return elements.flatMap((element, k) => {
    if (!/^H[1-6]$/.test(element.type)) return [];
    const own = pagesUnder(sheet, element);
    const after = elements
      .slice(k + 1)
      .find((one) => one.content.length > 0 && !chain(one).includes(element));
    const next = after && pagesUnder(sheet, after)[0];
    const where = sheet.read(element);
    return next === undefined ? [] : [{ where, value: next - (own.at(-1) ?? next) }];
  });
}

/** How many lines of a list that is cut stand on its first page and on its last; steps and labels are no lines. */
function listEnds(sheet: Sheet): Measured[] {
  const isLine = (item: Element): boolean =>
    item.kids.some(({ type }) => type === "LBody") &&
    !below(item).some((one) => one.type === "Div" || isStep(sheet, one));
  return sheet.subject.elements
    .filter(({ type, kids }) => type === "L" && kids.every(isLine))
    .flatMap((list) => {
      const pages = list.kids.flatMap((item) => pagesUnder(sheet, item).slice(0, 1));
      const [first, last] = [pages.at(0), pages.at(-1)];
      if (first === last) return [];
      return [first, last].map((end) => ({
        where: sheet.read(list).slice(0, 60),
        value: pages.filter((page) => page === end).length,
      }));
    });
}

/** How far small print that follows a table is from it. */
function noteGaps(sheet: Sheet): Measured[] {
  const small = new Set(
    sheet.pages.flatMap(({ texts }) =>
      texts.filter(({ size }) => size < (sheet.large ? 13 : 11)).map(({ element }) => element),
    ),
  );
  return sheet.subject.elements.flatMap(({ type, kids }) =>
    type !== "Sect"
      ? []
      : kids.flatMap((note, i) => {
          const table = kids[i - 1];
          if (table?.type !== "Table" || note.type !== "P" || !small.has(note)) return [];
          const [from = 0, to = from] = [
            pagesUnder(sheet, table).at(-1),
            pagesUnder(sheet, note)[0],
          ];
          return [{ where: sheet.read(note).slice(0, 60), value: Math.abs(to - from) }];
        }),
  );
}

/** Whether the page is the last one of a sheet. */
function endsHere({ pages }: Sheet, i: number): boolean {
  const next = pages[i + 1]?.texts.find(({ element }) => element);
  if (!next) return true;
  return next.text === "Job";
}

/** How far down a page is filled, of the room between the margins. */
function fillOf(page: Drawn): number {
  const [top, bottom] = [19 * mm, page.height - 19 * mm];
  const reach = [
    ...linesOf(page).map(({ base }) => base),
    ...page.lines.map(({ y, y2 }) => Math.max(y, y2)),
    ...page.frames.map(({ y, h }) => y + h),
  ];
  return (Math.max(top, ...reach.filter((y) => y <= bottom)) - top) / (bottom - top);
}
