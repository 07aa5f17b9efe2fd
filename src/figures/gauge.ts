import { choice, number, otherwise } from "./input.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";

/** Weight of the sheet in lb/ft² by gauge number, 10 to 26: Manufacturers' Standard Gauge; 10 to 15, 25 and 26 from memory. */
const weights = [
  5.625, 5, 4.375, 3.75, 3.125, 2.8125, 2.5, 2.25, 2, 1.75, 1.5, 1.375, 1.25, 1.125, 1, 0.875, 0.75,
];
const first = 10;

/** Thickness of a steel sheet from its gauge number. */
export const gauge = figure({
  name: "gauge",
  about: "the thickness of steel sheet from its gauge number",
  inputs: {
    gauge: number("the gauge number", first, first + weights.length - 1, { whole: true }),
    surface: otherwise(choice("bare or galvanized", ["bare", "galvanized"]), "bare"),
  },
  formula: "t = weight (lb/ft²) / 41.82 in; galvanized 0.0037 in more",
  source:
    "Manufacturers' Standard Gauge for sheet steel, 41.82 lb/ft² per inch; galvanized sheet gauge.",
  range: "10 to 26; refuses others. Wire, copper and stainless gauges are other scales.",
  compute: (given) => {
    const weight = weights[given.gauge - first];
    if (weight === undefined) throw new Refusal("refused", `no gauge ${given.gauge}`);
    const inches = weight / 41.82 + (given.surface === "galvanized" ? 0.0037 : 0);
    return {
      results: [
        { name: "thickness", value: inches * 25.4, unit: "mm" },
        { name: "decimal inch", value: inches, unit: "in" },
      ],
    };
  },
});
