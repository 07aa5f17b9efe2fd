import { choice, optional } from "./input.js";
import { type Quantity, valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { hole, sheet, weldCaution } from "./sheet.js";
import { spotWeldOf } from "./spot-table.js";

type Spacing = { pitch: number; edge: number };

function spot(sheet: Quantity<"length"> | undefined): Spacing {
  if (sheet === undefined)
    throw new Refusal("wrong", "a spot weld needs sheet=…, thickness of the thinner sheet");
  const weld = spotWeldOf(valueIn(sheet, "mm"));
  if (weld !== undefined) return { pitch: weld.pitch, edge: 1.25 * weld.nugget };
  throw new Refusal("refused", "the class A schedule ends at 0.125 in");
}

function plug(hole: Quantity<"length"> | undefined): Spacing {
  if (hole === undefined)
    throw new Refusal("wrong", "a plug weld needs hole=…, as 8 mm or 5/16 in");
  return { pitch: 4 * valueIn(hole, "mm"), edge: 1.5 * valueIn(hole, "mm") };
}

/** Least distance between weld centres and from a weld's centre to the edge of the sheet, mm. */
export const weldSpacing = figure({
  name: "weld-spacing",
  about: "least distance between welds, and from a weld to the edge",
  inputs: {
    weld: choice("the kind of weld", ["spot", "plug"]),
    sheet: optional(sheet),
    hole: optional(hole),
  },
  formula:
    "spot: pitch from the class A schedule, edge 1.25·nugget; plug: pitch 4·hole, edge 1.5·hole",
  source:
    "Schedule in the layout of the RWMA class A table; ISO 14373, edge, from memory; AISC 360 J2.3b, plug pitch, from memory; AISI S100 E2.2, plug edge, from memory.",
  range: "0.5 to 3.2 mm, holes of 4 to 16 mm; refuses others.",
  caution: `${weldCaution} Where its welds stand closer, theirs is the place.`,
  compute: (given) => {
    const { pitch, edge } = given.weld === "spot" ? spot(given.sheet) : plug(given.hole);
    return {
      results: [
        { name: "least pitch", value: pitch, unit: "mm" },
        { name: "least edge distance", value: edge, unit: "mm" },
      ],
    };
  },
});
