import { gatherOf } from "../gather.js";
import { type Sheet, headOf } from "../sheet.js";

/** Everything to have ready before the first part comes off. */
export const gather: Sheet = {
  name: "gather",
  applies: () => true,
  view: (input, words) => {
    const people = Math.max(1, ...input.steps.map((step) => step.people));
    return {
      ...headOf(input),
      gather: gatherOf(input.brief, input.steps, words),
      people,
      lifts: people > 1,
    };
  },
};
