import type { Step } from "../model/plan.js";
import { bagKey } from "./bags.js";

/** Cuts steps wherever the task, its side or the phase changes. */
export function runsOf(steps: readonly Step[]): Step[][] {
  const all: Step[][] = [];
  for (const step of steps) {
    const last = all.at(-1);
    const [head] = last ?? [];
    const same = head && bagKey(head) === bagKey(step) && head.phase === step.phase;
    if (last && same) last.push(step);
    else all.push([step]);
  }
  return all;
}
