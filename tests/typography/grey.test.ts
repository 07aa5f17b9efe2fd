import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { has, run } from "../pdf.js";
import { readPdf } from "../pdfua/objects.js";
import { printPack, repairPacks } from "../pdfua/packs.js";
import { subjectOf } from "../pdfua/subject.js";
import { contrast } from "./color.js";
import type { Drawn, Text } from "./drawn.js";
import { sheetOf } from "./sheet.js";

/** A page as a grey printer gives it. */
interface Grey {
  width: number;
  scale: number;
  pixels: Buffer;
}

const dpi = 100;

/** Renders one page in grey, as a PGM file, and reads its pixels. */
function greyOf(bytes: Buffer, page: number): Grey {
  const folder = mkdtempSync(join(tmpdir(), "countback-grey-"));
  const file = join(folder, "pack.pdf");
  writeFileSync(file, bytes);
  const n = String(page);
  run("pdftoppm", [
    "-gray",
    "-r",
    String(dpi),
    "-f",
    n,
    "-l",
    n,
    "-singlefile",
    file,
    join(folder, "p"),
  ]);
  const image = readFileSync(join(folder, "p.pgm"));
  rmSync(folder, { recursive: true });
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(image.subarray(0, 40).toString("latin1"));
  if (!head) throw new Error("no grey picture");
  return { width: Number(head[1]), scale: dpi / 72, pixels: image.subarray(head[0].length) };
}

/** The greys in a part of a page. */
function pixelsIn({ width, scale, pixels }: Grey, { x, right, base, size }: Text): number[] {
  const seen: number[] = [];
  for (let py = Math.ceil((base - size * 0.7) * scale); py < base * scale; py++)
    for (let px = Math.ceil((x - 1) * scale); px < (right + 1) * scale; px++)
      seen.push(pixels[py * width + px] ?? 0);
  return seen;
}

/** The darkest and the lightest grey of a word: those of the letters and of what lies under them. */
function greysIn(grey: Grey, text: Text): [number, number] {
  const seen = pixelsIn(grey, text);
  return [Math.min(...seen), Math.max(...seen)];
}

/** The grey that lies under a word: that of the line above its letters. */
function groundIn(grey: Grey, text: Text): number {
  const above = pixelsIn(grey, { ...text, base: text.base - text.size * 0.85, size: 2 });
  return above.toSorted((a, b) => a - b)[Math.floor(above.length / 2)] ?? 0;
}

/** The signal words of the messages of a page. */
function wordsOf(page: Drawn): Text[] {
  return page.texts.filter(({ text }) => /^(DANGER|WARNING|CAUTION|NOTICE)$/.test(text));
}

describe.runIf(has("qpdf") && has("pdftoppm"))("printed in grey", () => {
  const found: Record<string, [number, number]> = {};
  const grounds: Record<string, number> = {};
  beforeAll(async () => {
    const [pack] = repairPacks;
    const hazards = pack && (await printPack(pack)).find(({ name }) => name.includes("hazards"));
    if (!hazards) throw new Error("no hazard sheet");
    const { pages } = sheetOf(subjectOf(readPdf(hazards.bytes)), false);
    for (const [i, page] of pages.entries()) {
      const words = wordsOf(page).filter(({ text }) => !(text in found));
      if (words.length === 0) continue;
      const grey = greyOf(hazards.bytes, i + 1);
      for (const word of words) {
        found[word.text] = greysIn(grey, word);
        grounds[word.text] = groundIn(grey, word);
      }
    }
  }, 120_000);

  it.each(["DANGER", "WARNING", "CAUTION", "NOTICE"])(
    "%s stands out by 4.5 to 1 (ISO 3864; WCAG 2.2, 1.4.3; B2.1)",
    (word) => {
      const [dark, light] = found[word] ?? [0, 0];
      expect(contrast(dark, light)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it("no two of the four words have a ground of the same grey", () => {
    const greys = ["DANGER", "WARNING", "CAUTION", "NOTICE"].map((word) => grounds[word] ?? 0);
    const sorted = greys.toSorted((a, b) => a - b);
    for (const [i, ground] of sorted.slice(1).entries())
      expect(contrast(sorted[i] ?? 0, ground), greys.join(", ")).toBeGreaterThanOrEqual(1.5);
  });

  it("white on orange, which the colours forbid, would be found", () => {
    const orange = 0.299 * 0xd0 + 0.587 * 0x5d + 0.114 * 0x29;
    expect(contrast(Math.round(orange), 255)).toBeLessThan(4.5);
    expect(contrast(Math.round(orange), 0)).toBeGreaterThan(4.5);
  });
});
