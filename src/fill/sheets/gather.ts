import { givesVapour } from "../../model/verbs.js";
import { gatherOf } from "../gather.js";
import { peopleOf } from "../people.js";
import { type Sheet, headOf } from "../sheet.js";

/** Everything to have ready before the first part comes off. */
export const gather: Sheet = {
  name: "gather",
  applies: () => true,
  view: (input, words) => ({
    ...headOf(input),
    gather: gatherOf(input.brief, input.steps, words),
    ...peopleOf(input.steps),
    coated: input.steps.some(({ verb }) => givesVapour(verb)),
  }),
};
