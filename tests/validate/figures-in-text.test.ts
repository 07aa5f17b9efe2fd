import { expect, it } from "vitest";
import { open, plan } from "../../src/index.js";
import { laidOut } from "../cases/read-case.js";

const text = `recipe: lamp
name: Cabin lamp
things: { lamp: cabin lamp }
work:
  - drill: lamp
    say: Drill {pilot-hole} deep.
    figures: &figures
      pilot-hole: { kind: pilot-hole, value: 3, unit: mm, source: practice }
  - pause: lamp-off
    checks: ["The hole is {pilot-hole} wide."]
    figures: *figures
  - hold: lamp-seen
    role: lead-technician
    accept: The hole is {pilot-hole} wide.
    figures: *figures
`;

it("a figure named in any sentence of a step is printed with its unit", () => {
  const files = [{ path: "tiny/strip/lamp.yaml", text }];
  const steps = laidOut({ files, without: [] }, (folder) => {
    const { value, diagnostics } = open(folder);
    expect(diagnostics).toEqual([]);
    return value ? (plan(value, { job: "lamp", fitted: {} }).value?.steps ?? []) : [];
  });
  const [drill, pause, hold] = steps.filter((step) => step.task === "lamp");
  expect(drill?.says).toBe("Drill 3 mm deep.");
  expect(pause?.checks).toEqual(["The hole is 3 mm wide."]);
  expect(hold?.hold?.accept).toBe("The hole is 3 mm wide.");
});
