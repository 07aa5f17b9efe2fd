import type { Step } from "../model/plan.js";
import { verbs } from "../model/verbs.js";

/** The bag of each task and position whose fixings are kept, numbered in the order of work. */
export function bagsOf(steps: readonly Step[]): Map<string, number> {
  const bags = new Map<string, number>();
  for (const step of steps) {
    const out = verbs[step.verb]?.effect === "out";
    const kept = step.fixings.some((fixing) => !fixing.oneUse);
    const key = bagKey(step);
    if (out && kept && !bags.has(key)) bags.set(key, bags.size + 1);
  }
  return bags;
}

/** The name under which a step's bag is kept. */
export function bagKey(step: Step): string {
  return `${step.task}@${step.position}`;
}
