import type { Words } from "../../model/words.js";
import { type Laid, type Sheet, headOf, pairsOf } from "../sheet.js";

/** What each sheet of the pack is for, how many pages it has and who carries it, and on which page of the checklist each block begins. */
export const guide: Sheet = {
  name: "guide",
  comesLast: true,
  applies: () => true,
  view: (input, words) => ({
    ...headOf(input),
    pages: Object.fromEntries(Object.entries(input.laid).map(([name, { pages }]) => [name, pages])),
    contents: contentsOf(input.laid["checklist"]),
    words: wordsOf(input.laid["checklist"], words),
  }),
};

/** A heading and the page on which it stands. */
interface Line {
  text: string;
  page: number;
}

/** A part of the checklist and its blocks, two in a row. */
interface Part extends Line {
  rows: Line[][];
}

/** The contents of the checklist: its parts, and the blocks of each. */
function contentsOf(laid: Laid | undefined): Part[] {
  const parts: (Line & { blocks: Line[] })[] = [];
  for (const { level, text, page } of laid?.headings ?? []) {
    if (level === 2) parts.push({ text, page, blocks: [] });
    if (level === 3) parts.at(-1)?.blocks.push({ text, page });
  }
  return parts.map(({ blocks, ...part }) => ({
    ...part,
    rows: pairsOf(blocks),
  }));
}

/** On which pages of the checklist the words are told. */
function wordsOf(
  laid: Laid | undefined,
  { texts }: Words,
): { from: number; to: number } | undefined {
  const at = (text: string): number | undefined =>
    laid?.headings.find((one) => one.text === (texts[text] ?? text))?.page;
  const [from, to] = [at("What the words mean"), at("Before you start")];
  return from === undefined || to === undefined ? undefined : { from, to };
}
