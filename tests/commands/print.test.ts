import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { countback } from "../countback.js";
import { textByPdfParse } from "../pdf.js";
import { small } from "../plans.js";

const fresh = (): string => mkdtempSync(join(tmpdir(), "countback-"));
const library = ["--library", small];

interface PlanJson {
  steps: { id: string; verb: string; says: string }[];
}

/** A plan file from which one step was taken out by hand. */
function brokenPlan(folder: string): string {
  const plan = JSON.parse(
    countback(["plan", "floor-paint", ...library, "--json"]).stdout,
  ) as PlanJson;
  const steps = plan.steps.filter((step) => step.id !== "carpet.refit.put-in-carpet");
  expect(steps).toHaveLength(plan.steps.length - 1);
  const file = join(folder, "plan.json");
  writeFileSync(file, JSON.stringify({ ...plan, steps }));
  return file;
}

const sheets = ["checklist", "count"];
const names = [...sheets, "pack"].map((sheet) => `floor-paint-${sheet}.pdf`);

describe("print", () => {
  it("prints the same bytes of a library wherever it lies", () => {
    const folder = fresh();
    const elsewhere = join(folder, "recipes of another shop");
    cpSync(small, elsewhere, { recursive: true });
    const bytes = [small, elsewhere].map((library) => {
      const out = fresh();
      const asked = ["print", "floor-paint", "--sheets", "checklist", "--library", library];
      expect(countback([...asked, "--out", out]).code).toBe(0);
      return readFileSync(join(out, "floor-paint-checklist.pdf"));
    });
    expect(bytes[0]?.length).toBeGreaterThan(10_000);
    expect(bytes[0]?.equals(bytes[1] ?? Buffer.alloc(0))).toBe(true);
  });

  it("writes the checklist of a job and says what it took from the range", () => {
    const folder = fresh();
    const { code, stdout, stderr } = countback([
      "print",
      "floor-paint",
      "--sheets",
      sheets.join(),
      ...library,
      "--out",
      folder,
    ]);
    expect(code).toBe(0);
    expect(stdout).toBe(names.map((name) => `${join(folder, name)}\n`).join(""));
    expect(stderr).toContain("taken from the range: seats=manual");
    expect(readdirSync(folder)).toEqual(names);
  });

  it("writes the same sheet for a browser", () => {
    const folder = fresh();
    countback(["print", "floor-paint", ...library, "--out", folder, "--html"]);
    const html = readFileSync(join(folder, "floor-paint-checklist.html"), "utf8");
    expect(html).toMatch(/^<!doctype html>/);
    expect(html.match(/aria-label="step \d+ done"/g)?.length).toBeGreaterThan(20);
  });

  it("writes no clean sheet of a plan that does not prove, and leaves an older one alone", () => {
    const folder = fresh();
    const file = brokenPlan(folder);
    const older = join(folder, "floor-paint-checklist.pdf");
    writeFileSync(older, "older");
    const { code, stderr } = countback(["print", file, ...library, "--out", folder]);
    expect(code).toBe(1);
    expect(stderr).toContain("came off and never goes back");
    expect(readFileSync(older, "utf8")).toBe("older");
    expect(readdirSync(folder)).toHaveLength(2);
  });

  it("prints it as a draft when told to: DRAFT on every page, the findings on page one, exit 1", async () => {
    const folder = fresh();
    const { code } = countback([
      "print",
      brokenPlan(folder),
      ...library,
      "--out",
      folder,
      "--draft",
    ]);
    expect(code).toBe(1);
    const pages = await textByPdfParse(readFileSync(join(folder, "floor-paint-checklist.pdf")));
    for (const text of pages) expect(text).toContain("DRAFT");
    expect(pages[0]).toContain("came off and never goes back");
  });

  it.each([
    ["a folder that is missing", ["--out", "/nowhere/at/all"], /missing or cannot be written/],
    [
      "a sheet that there is not",
      ["--sheets", "poster"],
      /no sheet 'poster'; sheets: .*checklist, count/,
    ],
    ["a paper that there is not", ["--paper", "a5"], /a4, letter/],
    ["an option that is not one", ["--fitted", "seats"], /--fitted takes option=value/],
    ["a car file that is missing", ["--car", "nobody.yaml"], /cannot read nobody.yaml/],
  ])("refuses %s with exit 2", (_, args, message) => {
    const folder = fresh();
    const { code, stderr } = countback([
      "print",
      "floor-paint",
      ...library,
      "--out",
      folder,
      ...args,
    ]);
    expect(code).toBe(2);
    expect(stderr).toMatch(message);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("refuses an option value that the range lacks, and offers the nearest", () => {
    const folder = fresh();
    const args = ["print", "floor-paint", ...library, "--out", folder, "--fitted", "seats=powerd"];
    const { code, stderr } = countback(args);
    expect(code).toBe(1);
    expect(stderr).toContain("Did you mean 'powered'?");
    expect(existsSync(join(folder, "floor-paint-checklist.pdf"))).toBe(false);
  });

  it("points at the line of a bad car file", () => {
    const folder = fresh();
    const car = join(folder, "car.yaml");
    writeFileSync(car, "car: mine\nrange: tiny\nfitted: { seats: [manual] }\n");
    const { code, stderr } = countback(["plan", "floor-paint", ...library, "--car", car]);
    expect(code).toBe(1);
    expect(stderr).toContain("car.yaml:3:");
  });
});
