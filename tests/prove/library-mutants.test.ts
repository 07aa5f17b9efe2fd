import { expect, it, vi } from "vitest";
import { dropCodes } from "./expected.js";
import { Tally, trials } from "./library.js";

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
