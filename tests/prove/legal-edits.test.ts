import { expect, it, vi } from "vitest";
import type { Step } from "../../src/model/plan.js";
import { judged, opened, own, planned, small } from "../plans.js";
import { neighbours, trials } from "./library.js";

vi.setConfig({ testTimeout: 120_000 });
const all = trials();

const byHand = (near: Step, n: number, verb: string, does: Step["does"]): Step => ({
  ...near,
  id: `by-hand.${near.id}.${n}`,
  says: "Do this again.",
  verb,
  does: does.map((change) => ({ ...change, verb })),
});

it("accepts every swap of neighbours of one phase of which neither must come first", () => {
  let tried = 0;
  const refused: string[] = [];
  for (const trial of all)
    for (const [i, a, b] of neighbours(trial)) {
      if (a.phase !== b.phase || trial.why(a, b) !== undefined) continue;
      tried += 1;
      const codes = trial.codes(trial.steps.with(i, b).with(i + 1, a));
      if (codes.length > 0) refused.push(`${trial.job.name}: ${a.id}, ${b.id}: ${codes.join()}`);
    }
  process.stdout.write(
    `independent neighbours swapped: ${tried} tried, ${tried - refused.length} proven\n`,
  );
  expect(tried).toBeGreaterThan(200);
  expect(refused).toEqual([]);
});

it("accepts other words, other numbers and other names of steps written by hand", () => {
  for (const { steps, codes } of all) {
    const other = steps.map((step, i) => ({ ...step, says: `Line ${i}.`, n: `${i}.1` }));
    expect(codes(other)).toEqual([]);
  }
});

it("accepts a plug parted and joined once more before its test, and a fixing undone and done up once more", () => {
  let [plugs, fixings] = [0, 0];
  for (const { job, steps, codes } of all)
    for (const [i, step] of steps.entries()) {
      const again = step.does.map(({ verb, object, place, count }) => ({
        verb,
        object,
        place,
        ...(count === undefined ? {} : { count, fresh: 0 }),
      }));
      const plug = step.verb === "plug-in";
      if (!plug && (step.verb !== "do-up" || step.fixings.some((one) => one.oneUse))) continue;
      const there = byHand(step, 1, plug ? "unplug" : "undo", again);
      const back = byHand(step, 2, step.verb, again);
      expect([job.name, step.id, ...codes(steps.toSpliced(i + 1, 0, there, back))]).toEqual([
        job.name,
        step.id,
      ]);
      if (plug) plugs += 1;
      else fixings += 1;
    }
  process.stdout.write(`balanced extra pairs: ${plugs} plugs, ${fixings} fixings, all proven\n`);
  expect(Math.min(plugs, fixings)).toBeGreaterThan(20);
});

it("refuses half of such a pair", () => {
  const [trial] = all.filter(({ steps }) => steps.some((step) => step.verb === "plug-in"));
  const i = trial?.steps.findIndex((step) => step.verb === "plug-in") ?? -1;
  const step = trial?.steps[i];
  if (!trial || !step) throw new Error("no plug in the library");
  const half = byHand(step, 1, "unplug", step.does);
  expect(trial.codes(trial.steps.toSpliced(i + 1, 0, half))).toContain("joins");
});

it("says the same of a plan file, by the public way", () => {
  for (const [library, ask] of [
    [small, { job: "floor-paint", fitted: { seats: "powered" } }],
    [own, { job: "belt-buckle", fitted: {} }],
  ] as const) {
    const { value } = planned(ask, library);
    const steps = value?.steps ?? [];
    const say = (mutant: Step[]): string[] =>
      judged(opened(library), value, mutant).diagnostics.map((d) => d.code);
    expect(say(steps)).toEqual([]);
    const i = steps.findIndex((step) => step.verb === "put-in");
    expect(say(steps.toSpliced(i, 1))).toContain("return");
    expect(say(steps.map((step) => ({ ...step, says: "Otherwise." })))).toEqual([]);
  }
});
