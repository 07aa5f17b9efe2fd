import { describe, expect, it } from "vitest";
import type { PlanFile } from "../../src/index.js";
import { judged, planned } from "../plans.js";

type Steps = PlanFile["steps"];
const jobs = [
  { job: "floor-paint", fitted: {} },
  { job: "floor-paint", fitted: { seats: "powered" } },
  { job: "carpet", fitted: { seats: "powered" } },
];

describe.each(jobs)("mutants of $job $fitted", (ask) => {
  const { opened, value } = planned(ask);
  const steps = value?.steps ?? [];
  const codes = (mutant: Steps): string[] =>
    judged(opened, value, mutant).diagnostics.map((d) => d.code);

  it("starts from a plan that proves", () => {
    expect(steps.length).toBeGreaterThan(30);
    expect(codes(steps)).toEqual([]);
  });

  it("refuses the plan with any one step dropped", () => {
    const passed = steps.filter(
      (step) => codes(steps.filter((other) => other !== step)).length === 0,
    );
    expect(passed.map((step) => step.id)).toEqual([]);
  });

  it("refuses the plan with any count changed by one", () => {
    const passed: string[] = [];
    for (const by of [1, -1]) {
      for (const [i, step] of steps.entries()) {
        for (const [k, change] of step.does.entries()) {
          if (change.count === undefined) continue;
          const does = step.does.with(k, { ...change, count: change.count + by });
          if (codes(steps.with(i, { ...step, does })).length === 0) passed.push(`${step.id} ${by}`);
        }
      }
    }
    expect(passed).toEqual([]);
  });
});
