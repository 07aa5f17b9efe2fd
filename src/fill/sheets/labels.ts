import { bagsOf } from "../bags.js";
import { labelsOf } from "../labels.js";
import { type Sheet, headOf } from "../sheet.js";

/** A label to cut out for each bag of fixings. */
export const labels: Sheet = {
  name: "labels",
  applies: ({ steps }) => bagsOf(steps).size > 0,
  view: (input, words) => ({ ...headOf(input), labels: labelsOf(input.steps, words) }),
};
