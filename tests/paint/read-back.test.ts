import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { PlanFile } from "../../src/index.js";
import { flat, has, printed, run, textByPdfParse, tight, treesOf } from "../pdf.js";
import { planned } from "../plans.js";

const folder = mkdtempSync(join(tmpdir(), "countback-"));
const jobs = [
  ["seats moved by hand", { seats: "manual" }],
  ["seats moved by a motor", { seats: "powered" }],
] as const;

/** What a step must print, in order: its number, its words with figures marked, its counts. */
function expected(plan: PlanFile): string[] {
  return plan.steps.flatMap((step) => {
    const says = step.figures.reduce(
      (text, f) => text.replace(f.text, `${f.text}(${f.mark})`),
      step.says,
    );
    const counts = step.fixings.flatMap(({ count, name, plural }) => [
      `: ${count} ${count === 1 ? name : plural}`,
    ]);
    const hold = step.hold ? [step.hold.accept, `${step.hold.role}, name`] : [];
    const words = says.replaceAll(/_{3,}/g, "");
    return [`${step.n}${step.hold ? "·" : ""}`, ...step.checks, words, ...counts, ...hold];
  });
}

/** Finds the pieces one after the other; gives the first that is not there, or nothing. */
function firstMissing(text: string, pieces: readonly string[]): string | undefined {
  let at = 0;
  for (const piece of pieces) {
    const found = text.indexOf(tight(piece), at);
    if (found < 0) return piece;
    at = found;
  }
  return undefined;
}

describe.each(jobs)("the checklist of the floor, %s", (name, fitted) => {
  const file = join(folder, `${name.replaceAll(" ", "-")}.pdf`);
  const { opened, value } = planned({ job: "floor-paint", fitted });
  let bytes: Buffer;
  beforeAll(async () => {
    if (!value) throw new Error("no plan");
    bytes = await printed(opened, value);
    writeFileSync(file, bytes);
  });
  const pieces = (): string[] =>
    value ? expected(value).filter((piece) => !piece.startsWith("Stop")) : [];

  it("holds every step, count and hold once and in order, as pdf-parse reads it", async () => {
    const text = tight((await textByPdfParse(bytes)).join("\n"));
    expect(pieces().length).toBeGreaterThan(30);
    expect(firstMissing(text, pieces())).toBeUndefined();
    for (const step of value?.steps.filter((one) => one.hold) ?? [])
      expect(text.split(tight(`${step.n} · ${step.says}`))).toHaveLength(2);
  });

  it("has one box for each step, with a spoken name, in the order of the plan", async () => {
    const trees = await treesOf(bytes);
    const boxes = trees
      .flatMap(flat)
      .filter(({ role, alt }) => role === "Form" && alt?.endsWith(" done") === true)
      .map(({ alt }) => alt);
    const steps = value?.steps.filter((step) => !step.hold && step.checks.length === 0) ?? [];
    expect(boxes).toEqual(steps.map((step) => `step ${step.n} done`));
  });

  it.runIf(has("pdftotext"))("says the same to poppler", () => {
    const text = tight(run("pdftotext", ["-raw", file, "-"]));
    expect(firstMissing(text, pieces())).toBeUndefined();
  });

  it.runIf(has("qpdf"))("is sound to qpdf", () => {
    expect(run("qpdf", ["--check", file])).toContain("No syntax or stream encoding errors found");
  });

  it.runIf(has("pdffonts"))("embeds every font", () => {
    const rows = run("pdffonts", [file]).trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row).toMatch(/ yes +yes +yes /);
  });

  it("comes out the same twice", async () => {
    if (!value) throw new Error("no plan");
    expect(bytes.equals(await printed(opened, value))).toBe(true);
  });

  it.each(["a4", "letter"] as const)(
    "says on every sheet of %s which of how many it is",
    async (paper) => {
      if (!value) throw new Error("no plan");
      const pages = await textByPdfParse(await printed(opened, value, { paper }));
      for (const [i, text] of pages.entries())
        expect(text).toContain(`sheet ${i + 1} of ${pages.length}`);
      expect(pages.at(-1)).toContain("End of sheet");
    },
  );
});
