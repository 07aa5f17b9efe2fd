import type { Step } from "../model/plan.js";
import { bagKey } from "./bags.js";

/** Cuts steps wherever the task, its side, its stage or the phase changes. */
export function runsOf(steps: readonly Step[]): Step[][] {
  const all: Step[][] = [];
  for (const step of steps) {
    const last = all.at(-1);
    const [head] = last ?? [];
    const same =
      head?.phase === step.phase && head.title === step.title && bagKey(head) === bagKey(step);
    if (last && same) last.push(step);
    else all.push([step]);
  }
  return all;
}
