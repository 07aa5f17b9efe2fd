import { choice, number, otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { hole, sheet, weldCaution } from "./sheet.js";
import { nominalSpotShearOf } from "./spot-table.js";

/** Shear strength in N of a plug weld, where the sheet tears round it: 2.2 · t · (d − t) · Fu. */
function plugShearOf(d: number, t: number, tensile: number): number {
  return 2.2 * t * (d - t) * tensile;
}

/** How many plug welds at least match the shear strength of the spot welds they replace; never fewer than the factory's. */
export const plugWeldCount = figure({
  name: "plug-weld-count",
  about: "how many plug welds match the spot welds they replace",
  inputs: {
    sheet,
    hole,
    welds: number("spot welds of the factory", 1, 500, { whole: true }),
    steel: choice("the steel, from the maker's data", ["mild", "high-strength", "unknown"]),
    margin: otherwise(number("strength asked for, over the spot welds'", 1, 2), "1.2"),
    tensile: otherwise(
      quantity("least tensile strength of the sheet", "pressure", [270, 410, "MPa"]),
      "270 MPa",
    ),
  },
  formula:
    "n = max(factory count, ⌈factory count · margin · spot / plug⌉); spot = 144·t^1.47 kip, t in inch; plug = 2.2·t·(d − t)·Fu",
  source:
    "AISI S100-07 E2.6 (spot) and E2.2 (tearing round an arc spot), from memory; the weld itself, 0.60·F_EXX·π/4·d², AISC 360 table J2.5, bears more with any wire of 480 MPa; 270 MPa least strength of deep-drawing sheet, EN 10130, from memory; the margin is ours: 1.2 covers the older AISI table, up to a fifth above the formula on thin sheet.",
  range:
    "Mild steel of 0.5 to 3.2 mm, 270 to 410 MPa, holes of 4 to 16 mm, at a size below the codes' own least: an estimate. Refuses high-strength and unknown steel.",
  caution: `${weldCaution} This count may raise the maker's, never lower it.`,
  compute: (given) => {
    if (given.steel !== "mild")
      throw new Refusal("refused", `no count for ${given.steel} steel`, [
        "Take the maker's own procedure: heat changes such steel, and it may not be plug-welded at all.",
      ]);
    const t = valueIn(given.sheet, "mm");
    const spot = nominalSpotShearOf(t);
    const plug = plugShearOf(valueIn(given.hole, "mm"), t, valueIn(given.tensile, "MPa"));
    const enough = Math.ceil((given.welds * given.margin * spot) / plug - 1e-9);
    return {
      results: [
        { name: "plug welds", value: Math.max(given.welds, enough), unit: "1" },
        { name: "one spot weld", value: spot, unit: "N" },
        { name: "one plug weld", value: plug, unit: "N" },
      ],
      notes: ["Where so many do not fit at the least spacing, ask the maker: do not crowd them."],
    };
  },
});
