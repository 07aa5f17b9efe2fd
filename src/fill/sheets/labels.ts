import { bagsOf } from "../bags.js";
import { labelsOf } from "../labels.js";
import { qrSvg } from "../qr.js";
import { type Sheet, type SheetInput, headOf } from "../sheet.js";

/** A label to cut out for each bag of fixings. */
export const labels: Sheet = {
  name: "labels",
  applies: ({ steps }) => bagsOf(steps).size > 0,
  template: (input) => (input.labelPaper ? "label-sheet" : "labels"),
  view: (input, words) => ({
    ...headOf(input),
    ...(input.labelPaper ? placesOf(input.labelPaper) : {}),
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

/** Where labels stand on their sheet, as the template writes it: page margins, columns, and cells to leave free. */
function placesOf(paper: LabelPlaces) {
  const { columns, rows, left, top, across, down, width, start, paperHeight } = paper;
  const bottom = paperHeight - top - rows * down;
  return {
    margin: `${top}mm 0mm ${Math.max(0, bottom)}mm ${left}mm`,
    gutter: across - width,
    columns: Array(columns).fill(`${across}mm`).join(" "),
    free: Array.from({ length: start - 1 }, (_, i) => i),
  };
}

type LabelPlaces = NonNullable<SheetInput["labelPaper"]>;
