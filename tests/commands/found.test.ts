import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { countback } from "../countback.js";
import { textByPdfParse } from "../pdf.js";

const folder = mkdtempSync(join(tmpdir(), "countback-found-"));

const reached = "sill-trim-plain.left.strip.lift-out-sill-trim";
const back = "belt-buckle.right.check.hold-buckle-bolts";
const screw = "sill-earth-screw";

interface Edit {
  reached?: string;
  after?: string;
  backSteps?: string;
  warn?: string;
}

/** A file of what was found: one screw that the range does not know, taken out and put back. */
function foundFile({
  reached: at = reached,
  after = reached,
  backSteps,
  warn = "",
}: Edit = {}): string {
  const file = join(folder, "found.yaml");
  const way = backSteps ?? `  - after: ${back}\n    do: { do-up: ${screw} }\n`;
  const text = [
    "found-during: carpet",
    "replaces: 1a2b 3c4d",
    `reached: ${at}`,
    `fixings: { ${screw}: { kind: screw-earth, count: 1, where: below the trim, zone: opening } }`,
    "steps:",
    `  - after: ${after}`,
    `    do: { undo: ${screw}${warn} }`,
    `${way}decisions:`,
    "  - { hold: after-strip, choice: go on }",
    "readings:",
    "  - { step: carpet.strip.lift-out-carpet, name: damp under the carpet, value: dry }",
    "",
  ].join("\n");
  writeFileSync(file, text);
  return file;
}

interface PlanJson {
  steps: { n: string; id: string }[];
  count: { kind: string; off: number; back: number }[];
}

const planJson = (...args: string[]): PlanJson =>
  JSON.parse(countback(["plan", "carpet", "--json", "--quiet", ...args]).stdout) as PlanJson;

describe("what was found during the work", () => {
  it("numbers what is added after the step before it, and keeps every printed number", () => {
    const before = new Map(planJson().steps.map((step) => [step.id, step.n]));
    const after = planJson("--found", foundFile());
    const added = after.steps.filter((step) => !before.has(step.id));
    expect(added.map((step) => step.n)).toEqual([
      `${before.get(reached)}.1`,
      `${before.get(back)}.1`,
    ]);
    for (const step of after.steps)
      if (before.has(step.id)) expect(step.n).toBe(before.get(step.id));
    expect(after.count.find((line) => line.kind === screw)).toMatchObject({ off: 1, back: 1 });
  });

  it("refuses an added fixing that never goes back", () => {
    const { code, stderr } = countback(["plan", "carpet", "--found", foundFile({ backSteps: "" })]);
    expect(code).toBe(1);
    expect(stderr).toContain("[count]");
    expect(stderr).toContain(screw);
  });

  it("prints the rest of the pack from there, and names the revision that it replaces", async () => {
    const args = ["--found", foundFile(), "--out", folder, "--sheets", "checklist", "--quiet"];
    expect(countback(["print", "carpet", ...args]).code).toBe(0);
    const pages = await textByPdfParse(readFileSync(join(folder, "carpet-checklist.pdf")));
    const text = pages.join("\n");
    expect(pages[0]).toContain("replace revision 1a2b 3c4d");
    expect(text).toContain("go on");
    expect(text).toContain("damp under the carpet");
    expect(text).not.toContain("Photograph all four sides");
    expect(text).toContain("With the carpet misted and free of studs and lever");
  });

  it.each([
    ["a step that is not there", { reached: "nowhere" }, "[unknown-name]", ":3:10"],
    [
      "a step done already",
      { after: "every-job.prepare.tally-tool-count" },
      "[done-already]",
      ":6:12",
    ],
    [
      "a message that no catalog holds",
      { warn: ", warn: [zinc-fumes]" },
      "[unknown-name]",
      ":7:42",
    ],
    ["two breathing masks", { warn: ", warn: [zinc-fume, old-dust]" }, "[two-masks]", ":7:41"],
  ])("refuses %s, and says where", (_, edit, code, place) => {
    const { code: exit, stderr } = countback(["plan", "carpet", "--found", foundFile(edit)]);
    expect(exit).toBe(1);
    expect(stderr).toContain(code);
    expect(stderr).toContain(`found.yaml${place}`);
  });
});
