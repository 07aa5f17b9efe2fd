import { decisionSource, judged, tolerance, uncertainty } from "./decision.js";
import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** Whether a measured gap, height or length meets its nominal, given how surely it was measured. */
export const reading = figure({
  name: "reading",
  about: "whether a measured gap, height or length meets its nominal",
  inputs: {
    nominal: quantity("what it should be", "length", [0, 6000, "mm"]),
    measured: quantity("what was measured", "length", [0, 6000, "mm"]),
    tolerance,
    uncertainty,
  },
  formula: "Δ = |measured − nominal|; good where Δ + u ≤ tolerance, bad where Δ − u > tolerance",
  source: `${decisionSource} Nominal and tolerance are the maker's or the shop's, entered.`,
  range: "0 to 6 m; refuses others.",
  compute: (given) => {
    const difference = Math.abs(valueIn(given.measured, "mm") - valueIn(given.nominal, "mm"));
    const doubt = valueIn(given.uncertainty, "mm");
    return { results: judged(difference, doubt, valueIn(given.tolerance, "mm")) };
  },
});
