import { coatsOf } from "../coats.js";
import { joinsOf } from "../count-lines.js";
import { gatherOf } from "../gather.js";
import { hoursOf } from "../hours.js";
import { lookUpsOf } from "../look-up.js";
import { placedMessages } from "../messages.js";
import { countsFirst } from "../moments.js";
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
    messages: placedMessages(input, words).filter(
      ({ word }) => word === "danger" || !input.printed.includes("hazards"),
    ),
    uses: {
      witness: input.steps.some(({ hold }) => hold?.kind === "witness"),
      decision: input.steps.some(({ hold }) => hold?.kind === "decision"),
      counts: countsFirst(input.steps, words).size > 0,
      tags: input.steps.some((step) => joinsOf(step) > 0),
    },
    hours: hoursOf(input.steps),
    coats: coatsOf(input.brief, input.steps),
    lookUps: lookUpsOf(input.steps, words),
    waits: input.steps.some(({ wait }) => wait !== ""),
  }),
};
