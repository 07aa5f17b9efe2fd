import type { Step } from "../../model/plan.js";
import { gatherOf } from "../gather.js";
import { phasesOf } from "../phases.js";
import { gravestFirst } from "../messages.js";
import { type Sheet, headOf, sum } from "../sheet.js";

/** The main sheet: everything that comes off, the work, and everything going back on. */
export const checklist: Sheet = {
  name: "checklist",
  applies: () => true,
  view: (input, words) => {
    const people = Math.max(1, ...input.steps.map((step) => step.people));
    return {
      ...headOf(input),
      phases: phasesOf(input, words),
      gather: gatherOf(input.brief, input.steps, words),
      messages: gravestFirst(input.brief.safety),
      people,
      lifts: people > 1,
      hours: hoursOf(input.steps),
    };
  },
};

/** Hands-on hours, from the steps' own minutes. */
function hoursOf(steps: readonly Step[]): { low: number; likely: number; high: number } {
  const hours = (i: 0 | 1 | 2): number =>
    Math.max(1, Math.round(sum(steps.map((step) => step.minutes[i])) / 60));
  return { low: hours(0), likely: hours(1), high: hours(2) };
}
