import type { Step } from "../model/plan.js";
import { bagKey } from "./bags.js";

/** Cuts steps wherever the task, its side, its stage or the phase changes. */
export function runsOf(steps: readonly Step[]): Step[][] {
  const all: Step[][] = [];
  for (const step of steps) {
    const last = all.at(-1);
    const [head] = last ?? [];
    const same = head && bagKey(head) === bagKey(step) && head.phase === step.phase;
    const goesOn = same && head.title === step.title;
    if (last && goesOn) last.push(step);
    else all.push([step]);
  }
  return all;
}
