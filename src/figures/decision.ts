import { otherwise, quantity } from "./input.js";
import type { Result } from "./rule.js";

/** How far a length may be off, as an input. */
export const tolerance = quantity("how far it may be off", "length", [0.1, 50, "mm"]);

/** How surely a length was read, as an input; 1 mm for a tape or a tram gauge is common practice. */
export const uncertainty = otherwise(
  quantity("uncertainty of each measurement, plus or minus", "length", [0, 20, "mm"]),
  "1 mm",
);

/** Where the decision rule comes from. */
export const decisionSource =
  "ISO 14253-1, decision rule with guard bands, from memory; 1 mm for a tape or a tram gauge is common practice.";

/** Judges a difference in mm whose uncertainty is known: good or bad only where the uncertainty cannot change it. */
export function judged(difference: number, doubt: number, tolerance: number): Result[] {
  return [
    { name: "verdict", value: verdictOf(difference, doubt, tolerance) },
    { name: "difference", value: difference, unit: "mm" },
    { name: "uncertainty of the difference", value: doubt, unit: "mm" },
  ];
}

function verdictOf(difference: number, doubt: number, tolerance: number): string {
  if (difference + doubt <= tolerance + 1e-9) return "good";
  return difference - doubt > tolerance + 1e-9 ? "bad" : "undecided: measure again, more surely";
}
