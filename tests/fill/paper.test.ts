import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { beforeAll, describe, expect, it } from "vitest";
import { print } from "../../src/index.js";
import { repairs } from "./filled.js";

const names = ["handover", "apprentice", "hazards", "measurements", "welds", "labels"];
const widths = { a4: 210, letter: 215.9 };
const mm = 72 / 25.4;

interface Piece {
  text: string;
  size: number;
  end: number;
  y: number;
}

/** The pieces of text on each page of a PDF: size, right end and height above the foot, in points. */
async function piecesOf(bytes: Buffer): Promise<Piece[][]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await task.promise;
  const pages: Piece[][] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const { items } = await (await document.getPage(n)).getTextContent();
    const pieces = items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [item] : []));
    pages.push(
      pieces.map(({ str, transform, width }) => ({
        text: str,
        size: Number(transform[3]),
        end: Number(transform[4]) + width,
        y: Number(transform[5]),
      })),
    );
  }
  await task.destroy();
  return pages;
}

const papers = [
  { paper: "a4", large: false },
  { paper: "letter", large: false },
  { paper: "a4", large: true },
] as const;
const cases = repairs
  .filter(({ name }) => /quillet-0917|quillet-1355/.test(name))
  .flatMap((one) => papers.map((how) => ({ ...one, ...how })));

describe.each(cases)("the pack of $name on $paper, large: $large", (one) => {
  const { opened, plan, paper, large } = one;
  const options = { paper, large, draft: false, html: false, sheets: names };
  const printed: { name: string; pages: Piece[][] }[] = [];
  beforeAll(async () => {
    const { value = [] } = await print(opened, plan, options);
    for (const { name, bytes } of value)
      if (!name.endsWith("-pack.pdf")) printed.push({ name, pages: await piecesOf(bytes) });
  });

  it("has every sheet, each with one end", () => {
    const sheetOf = ({ name }: { name: string }) => name.split("-").at(-1)?.replace(".pdf", "");
    expect(printed.map(sheetOf).toSorted()).toEqual(names.toSorted());
    for (const { pages } of printed) {
      const ends = pages.map((page) => page.filter(({ text }) => text === "End").length);
      expect(ends.at(-1)).toBe(1);
      expect(ends.slice(0, -1).filter((count) => count > 0)).toEqual([]);
    }
  });

  it("has no letter under 10 pt and no word in the right margin", () => {
    for (const { name, pages } of printed) {
      const all = pages.flat();
      expect(all.length).toBeGreaterThan(100);
      const small = all.filter(({ size }) => size < 9.99).map(({ text }) => `${name}: ${text}`);
      const over = all.filter(({ end }) => end > (widths[paper] - 14) * mm + 0.5);
      expect(small).toEqual([]);
      expect(over.map(({ text }) => `${name}: ${text}`)).toEqual([]);
    }
  });
});
