import type { Element } from "../../pdfua/structure.js";
import { contrast, groundOf } from "../color.js";
import type { Text } from "../drawn.js";
import {
  type Measured,
  type Rule,
  type Sheet,
  at,
  boxesOf,
  chain,
  eachText,
  isStep,
  linesOf,
} from "../sheet.js";

/** Sizes, leading, emphasis and contrast of type. */
export const typeRules: readonly Rule[] = [
  {
    name: "step text is 12 pt, 14 pt in large type",
    source: "CAP 676 ch. 7 (C3.1), conflict K3",
    unit: "of its size",
    least: 1,
    measure: (sheet) => {
      const wanted = sheet.large ? 14 : 12;
      return stepTexts(sheet).map(({ where, value }) => ({ where, value: value / wanted }));
    },
  },
  {
    name: "x-height of step text in large type, B612 with 0.550 em",
    source: "NASA CR 177605 no. 7: 0.10 in (C1)",
    unit: "pt",
    least: 7.2,
    measure: (sheet) =>
      sheet.large
        ? stepTexts(sheet).map(({ where, value }) => ({ where, value: value * 0.55 }))
        : [],
  },
  {
    name: "no text under 10 pt",
    source: "CAP 676 ch. 7 (C3.1)",
    unit: "pt",
    least: 10,
    measure: (sheet) => eachText(sheet, ({ size }) => size),
  },
  {
    name: "headings are at least 12 pt",
    source: "CAP 676 ch. 7 (C3.1)",
    unit: "pt",
    least: 12,
    measure: (sheet) =>
      eachText(sheet, (text) => (isHeading(text.element) ? text.size : undefined)),
  },
  {
    name: "leading is at least 1.25 of the size",
    source: "NASA CR 177605 no. 9 (C1)",
    unit: "em",
    least: 1.25,
    measure: leadings,
  },
  {
    name: "two families, one of them for characters that the other lacks",
    source: "NASA CR 177605 no. 12 (C1)",
    unit: "families",
    most: 2,
    measure: ({ pages }) => [
      {
        where: "the whole",
        value: new Set(pages.flatMap(({ texts }) => texts.map(({ family }) => family))).size,
      },
    ],
  },
  {
    name: "at most two ways of emphasis in running text",
    source: "NASA CR 177605 no. 12 (C1)",
    unit: "ways",
    most: 2,
    measure: ({ pages }) => {
      const ways = pages.flatMap(({ texts }) => texts.filter(({ level }) => level).map(styleOf));
      return [{ where: "the whole", value: new Set(ways.filter((way) => way !== "")).size }];
    },
  },
  {
    name: "no long run of capitals",
    source: "NASA CR 177605 no. 4 (C1)",
    unit: "words",
    most: 5,
    measure: ({ pages }) =>
      pages.flatMap((page, i) =>
        linesOf(page).map(({ text }) => ({ where: at(i, text), value: capitals(text) })),
      ),
  },
  {
    name: "no line in italics",
    source: "NASA CR 177605 no. 11, CAP 676 ch. 7 (C3.2)",
    unit: "italic",
    most: 0,
    measure: (sheet) => eachText(sheet, ({ italic }) => (italic ? 1 : 0)),
  },
  {
    name: "contrast of text",
    source: "WCAG 2.2, 1.4.6 (E3.2): 7, large text 4.5",
    unit: "of what is wanted",
    least: 1,
    measure: (sheet) =>
      eachText(sheet, (text, page) => {
        const large = text.size >= 18 || (text.bold && text.size >= 14);
        return contrast(text.color, groundOf(page, text)) / (large ? 4.5 : 7);
      }),
  },
  {
    name: "text in white is short, large and bold",
    source: "NASA CR 177605 no. 14 (C1)",
    unit: "pt",
    least: 12,
    measure: (sheet) =>
      eachText(sheet, ({ color, size, bold }) =>
        color === "#FFFFFF" ? (bold ? size : 0) : undefined,
      ),
  },
  {
    name: "contrast of boxes and of lines to write on",
    source: "WCAG 2.2, 1.4.11 (E3.3)",
    unit: "to 1",
    least: 3,
    measure: (sheet) => [
      ...boxesOf(sheet).map(({ i, box }) => ({
        where: at(i, "box"),
        value: contrast(box.color, "#FFFFFF"),
      })),
      ...sheet.pages.flatMap(({ lines }, i) =>
        lines.map(({ color }) => ({ where: at(i, "line"), value: contrast(color, "#FFFFFF") })),
      ),
    ],
  },
];

function isHeading(element: Element | undefined): boolean {
  return chain(element).some(({ type }) => /^H[1-6]$/.test(type));
}

/** The sizes of the texts that say what to do: the paragraph after a step's number. */
function stepTexts(sheet: Sheet): Measured[] {
  const steps = sheet.subject.elements.filter((element) => isStep(sheet, element));
  const says = new Set(
    steps.map(({ kids }) => kids[kids.findIndex((kid) => /^[\d.]+$/.test(sheet.read(kid))) + 1]),
  );
  return eachText(sheet, (text) =>
    says.has(text.element) && !/^\([SCPMD]\)$/.test(text.text) ? text.size : undefined,
  );
}

/** How a text stands out from the rest. */
function styleOf({ bold, italic, color, element }: Text): string {
  if (isHeading(element)) return "";
  return [bold && "bold", italic && "italic", color !== "#000000" && "reversed"]
    .filter(Boolean)
    .join(" ");
}

function leadings({ pages }: Sheet): Measured[] {
  return pages.flatMap((page, i) =>
    linesOf(page).flatMap((line, k, lines) => {
      const next = lines[k + 1];
      const follows =
        next &&
        next.element === line.element &&
        line.element &&
        next.base > line.base + 0.4 * line.size;
      const size = Math.max(line.size, next?.size ?? 0);
      return follows ? [{ where: at(i, line.text), value: (next.base - line.base) / size }] : [];
    }),
  );
}

function capitals(text: string): number {
  const runs = text.split(/\s+/).map((word) => /^[^a-z]*[A-Z]{2}[^a-z]*$/.test(word));
  let [run, longest] = [0, 0];
  for (const loud of runs) {
    run = loud ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}
