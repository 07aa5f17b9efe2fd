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
    tolerance: otherwise(quantity("how far they may differ", "length", [0.1, 50, "mm"]), "3 mm"),
    uncertainty: otherwise(
      quantity("uncertainty of each measurement, plus or minus", "length", [0, 20, "mm"]),
      "1 mm",
    ),
  },
  formula: "Δ = |d1 − d2|, U = √2 · u; good where Δ + U ≤ tolerance, bad where Δ − U > tolerance",
  source:
    "ISO 14253-1, decision rule with guard bands, from memory; 3 mm from the repair tolerance of older unibody cars, an inter-industry collision-training body; 1 mm for a tram gauge or tape is common practice.",
  range: "10 mm to 20 m; refuses others. The maker's body dimensions win.",
  caution:
    "Equal diagonals prove square, not level or in place: measure heights and datum points too.",
  compute: (given) => {
    const difference = Math.abs(valueIn(given.first, "mm") - valueIn(given.second, "mm"));
    const doubt = Math.SQRT2 * valueIn(given.uncertainty, "mm");
    const verdict = verdictOf(difference, doubt, valueIn(given.tolerance, "mm"));
    return {
      results: [
        { name: "verdict", value: verdict },
        { name: "difference", value: difference, unit: "mm" },
        { name: "uncertainty of the difference", value: doubt, unit: "mm" },
      ],
    };
  },
});

function verdictOf(difference: number, doubt: number, tolerance: number): string {
  if (difference + doubt <= tolerance + 1e-9) return "good";
  return difference - doubt > tolerance + 1e-9 ? "bad" : "undecided: measure again, more surely";
}
