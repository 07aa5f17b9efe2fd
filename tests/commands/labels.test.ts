import { mkdtempSync, readFileSync, readdirSync } from "node:fs";
// The codes of this file: too-long.
import { tmpdir } from "node:os";
import { join } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { countback } from "../countback.js";

const mm = 72 / 25.4;
const args = ["print", "carpet", "--sheets", "labels", "--quiet"];

/** Prints bag labels onto a sheet of labels and gives the places at which they begin to say 'Bag', in mm. */
async function places(dimensions: string, paper: "a4" | "letter", height: number) {
  const folder = mkdtempSync(join(tmpdir(), "countback-labels-"));
  const all = [...args, "--paper", paper, "--out", folder, "--labels", dimensions];
  expect(countback(all).code).toBe(0);
  const data = new Uint8Array(readFileSync(join(folder, "carpet-labels.pdf")));
  const document = await getDocument({ data, verbosity: 0 }).promise;
  const page = await document.getPage(1);
  const { items } = await page.getTextContent();
  return items.flatMap((item) => {
    if (!("str" in item) || !/^Bag\b/.test(item.str)) return [];
    const [, , , , x = 0, y = 0] = item.transform as number[];
    return [{ x: x / mm, y: height - y / mm }];
  });
}

describe("bag labels on a sheet of labels", () => {
  it.each([
    [
      "a4",
      297,
      { columns: 2, rows: 4, width: 99.1, height: 67.7, left: 4.65, top: 13.1, across: 101.6 },
    ],
    [
      "letter",
      279.4,
      { columns: 2, rows: 5, width: 101.6, height: 50.8, left: 4, top: 12.7, across: 106.7 },
    ],
  ] as const)("stand where the dimensions say, on %s", async (paper, paperHeight, size) => {
    const text = Object.entries(size)
      .map(([key, value]) => `${key}=${value}`)
      .join();
    const found = await places(text, paper, paperHeight);
    expect(found).toHaveLength(size.columns * size.rows);
    for (const [i, { x, y }] of found.entries()) {
      const left = size.left + (i % size.columns) * size.across;
      const top = size.top + Math.floor(i / size.columns) * size.height;
      expect(x).toBeGreaterThan(left);
      expect(x).toBeLessThan(left + 10);
      expect(y).toBeGreaterThan(top);
      expect(y).toBeLessThan(top + 12);
    }
  });

  it("begin at the label that is asked for", async () => {
    const text = "columns=2,rows=4,width=99.1,height=67.7,left=4.65,top=13.1,across=101.6,start=4";
    const [first] = await places(text, "a4", 297);
    expect(first?.x).toBeGreaterThan(4.65 + 101.6);
    expect(first?.y).toBeGreaterThan(13.1 + 67.7);
  });

  it.each([
    [
      "columns=3,rows=9,width=60,height=38,left=7,top=15",
      2,
      "9 rows end at 357 mm, the paper at 297 mm",
    ],
    ["columns=4,rows=2,width=60,height=38,left=7,top=15", 2, "4 columns end at 247 mm"],
    ["columns=2,rows=2,width=60,height=38,left=7", 2, "--labels needs top=…"],
    ["columns=2,rows=2,wide=60", 2, "knows no 'wide'"],
    ["columns=2,rows=2,width=60,height=38,left=7,top=9,start=9", 2, "start is beyond the 4 labels"],
    [
      "columns=3,rows=9,width=60,height=20,left=7,top=9",
      1,
      "The text of 'bag 1' does not fit its place",
    ],
  ])("refuse %s, and write nothing", (dimensions, code, message) => {
    const folder = mkdtempSync(join(tmpdir(), "countback-labels-"));
    const { code: exit, stderr } = countback([...args, "--out", folder, "--labels", dimensions]);
    expect(exit).toBe(code);
    expect(stderr).toContain(message);
    expect(readdirSync(folder)).toEqual([]);
  });
});
