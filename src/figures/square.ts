import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** The diagonal that a rectangle of two sides must have, mm. */
export const square = figure({
  name: "square",
  about: "the diagonal that a square opening must have",
  inputs: {
    length: quantity("the longer side", "length", [10, 20_000, "mm"]),
    width: quantity("the shorter side", "length", [10, 20_000, "mm"]),
  },
  formula: "D = √(L² + W²)",
  source: "Pythagoras; carpentry references.",
  range: "10 mm to 20 m; refuses others. Both diagonals must be this long, not one.",
  compute: (given) => {
    const value = Math.hypot(valueIn(given.length, "mm"), valueIn(given.width, "mm"));
    return { results: [{ name: "diagonal", value, unit: "mm" }] };
  },
});
