import { decisionSource, judged, tolerance, uncertainty } from "./decision.js";
import { otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

const diagonal = (which: string) =>
  quantity(`the ${which} diagonal, as measured`, "length", [10, 20_000, "mm"]);

/** Whether two diagonals agree within a tolerance, given how surely each was measured. */
export const diagonals = figure({
  name: "diagonals",
  about: "whether two measured diagonals agree",
  inputs: {
    first: diagonal("one"),
    second: diagonal("other"),
    tolerance: otherwise(tolerance, "3 mm"),
    uncertainty,
  },
  formula: "Δ = |d1 − d2|, U = √2 · u; good where Δ + U ≤ tolerance, bad where Δ − U > tolerance",
  source: `${decisionSource} 3 mm from the repair tolerance of older unibody cars, an inter-industry collision-training body; no limit for the difference of diagonals is published.`,
  range: "10 mm to 20 m; refuses others. The maker's body dimensions win.",
  caution:
    "Equal diagonals prove square, not level or in place: measure heights and datum points too.",
  compute: (given) => {
    const difference = Math.abs(valueIn(given.first, "mm") - valueIn(given.second, "mm"));
    const doubt = Math.SQRT2 * valueIn(given.uncertainty, "mm");
    return { results: judged(difference, doubt, valueIn(given.tolerance, "mm")) };
  },
});
