import { cpSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { planned, proven, small } from "../plans.js";

/** What the prover says of the bar job when its last hold is somebody else's, or looks at something else. */
function findings(edit: (text: string) => string): string[] {
  const folder = mkdtempSync(join(tmpdir(), "countback-critical-"));
  cpSync(small, folder, { recursive: true });
  const file = join(folder, "tiny/repair/bar.yaml");
  const text = readFileSync(file, "utf8");
  const edited = edit(text);
  expect(edited).not.toBe(text);
  writeFileSync(file, edited);
  return planned({ job: "bar" }, folder).diagnostics.map(
    ({ code, message }) => `${code} ${message}`,
  );
}

const breach = /^holds .*'bar-joint' is critical, and nobody who did not do the work inspects it$/;

// EASA AMC4 145.A.48(b): an independent inspection is made by a person who did not do the work (read in part,
// /F3.2 of the standards notes); AMC 145.A.48(c): a critical step never shares a signature.
describe("critical work is inspected by somebody who did not do it", () => {
  it("holds where an inspector looks at the welds after the last of them", () => {
    expect(proven({ job: "bar" }).proof.laws.every((law) => law.held)).toBe(true);
  });

  it("is refused where the hold is released by somebody who may have done the work", () => {
    const found = findings((text) => text.replace("role: inspector", "role: lead-technician"));
    expect(found).toEqual([expect.stringMatching(breach)]);
  });

  it("is refused where the inspector looks at something else", () => {
    const found = findings((text) => text.replace("[bar-joint, bar-land]", "[bar-land]"));
    expect(found.filter((one) => breach.test(one))).toHaveLength(1);
  });

  it("every critical part of the library that comes off has an independent hold after it is back", () => {
    const { steps } = proven({ job: "seat-crossmember", fitted: { seats: "powered" } }, "recipes");
    const back = steps.filter((step) => step.phase === "refit" && step.critical !== undefined);
    const holds = steps.filter((step) => step.hold && /checker|inspector/.test(step.hold.role));
    expect(back.length).toBeGreaterThan(5);
    for (const step of back.filter((one) => !one.hold)) {
      const after = holds.some(
        (hold) =>
          hold.task === step.task &&
          hold.position === step.position &&
          steps.indexOf(hold) > steps.indexOf(step),
      );
      expect(after, step.id).toBe(true);
    }
  });
});
