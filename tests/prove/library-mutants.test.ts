import { expect, it, vi } from "vitest";
import type { Step } from "../../src/model/plan.js";
import { dropCodes, swapCodes } from "./expected.js";
import { Tally, neighbours, trials } from "./library.js";

vi.setConfig({ testTimeout: 120_000 });

// No equivalent mutant is known: every step, count, hold and dependent order of the library is refused when it is hurt.
const all = trials();

it("starts from plans that prove, of every recipe", () => {
  expect(all.length).toBeGreaterThan(30);
  expect(all.flatMap(({ job, steps, codes }) => codes(steps).map((c) => [job.name, c]))).toEqual(
    [],
  );
});

it("refuses every plan with any one step left out, by the law that the step serves", () => {
  const tally = new Tally("steps left out");
  for (const { job, steps, codes } of all)
    for (const [i, step] of steps.entries())
      tally.add(`${job.name}: ${step.id}`, codes(steps.toSpliced(i, 1)), dropCodes(step));
  tally.tell();
  expect(tally.passed).toEqual([]);
});

it("refuses every plan with any hold taken out of a step or off the sheet", () => {
  const tally = new Tally("holds removed");
  const holds = ["hold", "witness", "decide"];
  for (const { job, steps, codes } of all)
    for (const [i, step] of steps.entries()) {
      if (!step.does.some(({ verb }) => holds.includes(verb))) continue;
      const seen = { ...step, does: step.does.map((change) => ({ ...change, verb: "look-at" })) };
      const wanted = ["holds", "work"];
      tally.add(`${job.name}: ${step.id} gone`, codes(steps.toSpliced(i, 1)), wanted);
      tally.add(`${job.name}: ${step.id} only looked at`, codes(steps.with(i, seen)), wanted);
    }
  tally.tell();
  expect(tally.tried).toBeGreaterThan(100);
  expect(tally.passed).toEqual([]);
});

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
