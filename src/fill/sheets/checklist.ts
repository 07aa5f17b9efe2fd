import { gatherOf } from "../gather.js";
import { phasesOf } from "../phases.js";
import { gravestFirst } from "../messages.js";
import { hoursOf } from "../hours.js";
import { type Sheet, headOf } from "../sheet.js";

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
