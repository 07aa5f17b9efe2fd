import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";

/**
 * The bag of each task and position whose fixings are kept, numbered in the order of work; bags of steps that
 * were added during the work come last, so that printed numbers stay.
 */
export function bagsOf(steps: readonly Step[]): Map<string, number> {
  const bags = new Map<string, number>();
  const added = (step: Step): boolean => step.n.includes(".");
  for (const step of [...steps.filter((one) => !added(one)), ...steps.filter(added)]) {
    const out = effectOf(step.verb) === "out";
    const key = bagKey(step);
    if (out && isBagged(step) && !bags.has(key)) bags.set(key, bags.size + 1);
  }
  return bags;
}

/** Whether a step handles fixings that are kept in a bag. */
export function isBagged({ fixings }: Step): boolean {
  return fixings.some(({ oneUse }) => !oneUse);
}

/** Whether fixings are off at a step: some came out before it, and the last of their place is not back. */
export function fixingsAreOff(step: Step, steps: readonly Step[]): boolean {
  const at = steps.indexOf(step);
  const moved = (effect: string, one: Step): boolean =>
    one.fixings.length > 0 && effectOf(one.verb) === effect;
  return steps.slice(0, at).some((out) => {
    if (!moved("out", out)) return false;
    const back = steps.findLastIndex((one) => moved("in", one) && bagKey(one) === bagKey(out));
    return back < 0 || back > at;
  });
}

/** The name under which a step's bag is kept. */
export function bagKey(step: Step): string {
  return `${step.task}@${step.position}`;
}
