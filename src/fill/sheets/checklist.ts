import { gatherOf } from "../gather.js";
import { hoursOf } from "../hours.js";
import { gravestFirst } from "../messages.js";
import { peopleOf } from "../people.js";
import { phasesOf } from "../phases.js";
import { type Sheet, headOf } from "../sheet.js";

/** The main sheet: everything that comes off, the work, and everything going back on. */
export const checklist: Sheet = {
  name: "checklist",
  applies: () => true,
  view: (input, words) => ({
    ...headOf(input),
    ...peopleOf(input.steps),
    phases: phasesOf(input, words),
    gather: gatherOf(input.brief, input.steps, words),
    messages: gravestFirst(input.brief.safety),
    hours: hoursOf(input.steps),
  }),
};
