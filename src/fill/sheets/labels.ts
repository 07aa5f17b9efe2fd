import { bagsOf } from "../bags.js";
import { labelsOf } from "../labels.js";
import { qrSvg } from "../qr.js";
import { type Sheet, type SheetInput, headOf } from "../sheet.js";

/** A label to cut out for each bag of fixings. */
export const labels: Sheet = {
  name: "labels",
  applies: ({ steps }) => bagsOf(steps).size > 0,
  view: (input, words) => ({
    ...headOf(input),
    labels: labelsOf(input.steps, words).map((label) => ({
      ...label,
      qr: qrSvg(codeOf(input, label.number)),
    })),
  }),
};

/** What the code on a label says: the job, the revision of the sheets, and the bag. */
export function codeOf({ job, revision }: SheetInput, bag: number): string {
  return `${job} ${revision.replace(" ", "")} bag ${bag}`;
}
