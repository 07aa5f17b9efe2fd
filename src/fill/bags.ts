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

/** The name under which a step's bag is kept. */
export function bagKey(step: Step): string {
  return `${step.task}@${step.position}`;
}
