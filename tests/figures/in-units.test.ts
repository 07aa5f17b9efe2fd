import { expect, it } from "vitest";
import { textOf } from "../../src/figures/format.js";
import { inInches, stepInInches } from "../../src/figures/in-units.js";
import { opened, own, proven } from "../plans.js";

const { words } = opened(own);

// NIST SP 811 (2008), appendix B.8: 1 in = 25.4 mm exactly; 1 lbf·ft = 1.355 818 N·m; °F = 1.8 °C + 32.
it.each([
  [{ kind: "pilot-hole", value: 3, unit: "mm", source: "practice" as const }, "0.118 in (3 mm)"],
  [{ kind: "torque", value: 40, unit: "N·m", source: "demo" as const }, "29.5 lbf·ft (40 N·m)"],
  [{ kind: "temperature", value: 50, unit: "°C", source: "practice" as const }, "122 °F (50 °C)"],
  [{ kind: "time", value: 60, unit: "min", source: "practice" as const }, "60 min"],
  [{ kind: "torque", unit: "N·m", source: "maker" as const }, "____ lbf·ft"],
])("shows a figure to an inch shop with the metric one beside it", (figure, text) => {
  expect(textOf(inInches(figure, words), words)).toBe(text);
});

it("changes the figures in sentences, facts and readings, and nothing else", () => {
  const { steps } = proven({ job: "seat-crossmember" }, "recipes");
  const inches = steps.map((step) => stepInInches(step, words));
  const pilot = inches.find((step) => step.says.includes("pilot hole"));
  expect(pilot?.says).toContain("drill a 0.118 in (3 mm) pilot hole into each punch mark");
  expect(inches.map((step) => step.does)).toEqual(steps.map((step) => step.does));
  const changed = inches.filter((step, i) => step.says !== steps[i]?.says);
  expect(changed.every((step) => step.figures.length > 0)).toBe(true);
  const metric = inches.flatMap((step) => step.facts).filter(({ figure }) => figure?.unit === "mm");
  expect(metric).toEqual([]);
});
