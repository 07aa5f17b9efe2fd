import { expect, it, vi } from "vitest";
import type { Step } from "../../src/model/plan.js";
import { swapCodes } from "./expected.js";
import { Tally, neighbours, trials } from "./library.js";

vi.setConfig({ testTimeout: 120_000 });
const all = trials();

it("refuses every count that is one more or one less", () => {
  const tally = new Tally("counts changed by one");
  const changed = (step: Step, k: number, by: number): Step => {
    const does = step.does.map((change, n) =>
      n === k && change.count !== undefined ? { ...change, count: change.count + by } : change,
    );
    return { ...step, does };
  };
  for (const { job, steps, codes } of all)
    for (const [i, step] of steps.entries())
      for (const [k, change] of step.does.entries())
        for (const by of change.count === undefined ? [] : [1, -1])
          tally.add(`${job.name}: ${step.id} ${by}`, codes(steps.with(i, changed(step, k, by))), [
            "count",
          ]);
  tally.tell();
  expect(tally.passed).toEqual([]);
});

it("refuses every swap of neighbours of which one must come first, by the law that says so", () => {
  const tally = new Tally("dependent neighbours swapped");
  const kinds = new Set<string>();
  for (const trial of all)
    for (const [i, a, b] of neighbours(trial)) {
      const why = trial.why(a, b);
      if (why === undefined) continue;
      kinds.add(why);
      const codes = trial.codes(trial.steps.with(i, b).with(i + 1, a));
      tally.add(`${trial.job.name}: ${why}: ${a.id}, ${b.id}`, codes, swapCodes[why] ?? []);
    }
  tally.tell();
  expect([...kinds]).toEqual(
    expect.arrayContaining(["holder and host", "cover and covered", "chain", "need off"]),
  );
  expect(tally.passed).toEqual([]);
});
