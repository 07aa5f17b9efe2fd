import { number, otherwise } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";
import { hole, sheet } from "./sheet.js";
import { roundOf, steelDensity, wire } from "./wire.js";

/** Wire that a number of plug welds takes, m and g. */
export const plugWeldWire = figure({
  name: "plug-weld-wire",
  about: "the wire that a number of plug welds takes",
  inputs: {
    welds: number("plug welds", 1, 5000, { whole: true }),
    hole,
    sheet,
    wire,
    crown: otherwise(number("weld metal over the hole's own volume", 0, 2), "0.5"),
    efficiency: otherwise(number("share of the wire that stays in the weld", 0.5, 1), "0.9"),
  },
  formula: "V = n · π/4 · hole² · t · (1 + crown) / efficiency; L = V / (π/4 · wire²); m = ρ · V",
  source:
    "Computed from volumes; crown and efficiency are common practice, entered by the shop where it knows better.",
  range: "Holes of 4 to 16 mm in 0.5 to 3.2 mm steel; refuses others. Add what test pieces take.",
  compute: (given) => {
    const one = roundOf(given.hole) * valueIn(given.sheet, "mm") * (1 + given.crown);
    const volume = (given.welds * one) / given.efficiency;
    return {
      results: [
        { name: "wire", value: volume / roundOf(given.wire) / 1000, unit: "m" },
        { name: "mass", value: volume * steelDensity, unit: "g" },
      ],
    };
  },
});
