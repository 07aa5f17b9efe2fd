import type { Input } from "./input.js";
import { allowed, dimensionOf, readAny, readUnit, valueIn } from "./quantity.js";
import type { Quantity } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { units } from "./units.js";

const value: Input<Quantity> = {
  about: "the quantity, with its unit",
  takes: "25 lbf·ft or 5/16 in",
  read: (text) => readAny(text),
};

const to: Input<string> = { about: "the unit asked for", takes: "N·m", read: (text) => text };

/** A quantity in another unit of the same dimension. */
export const convert = figure({
  name: "convert",
  about: "a quantity in another unit",
  inputs: { value, to },
  formula: "value · factor of its unit / factor of the other; °F = °C · 9/5 + 32",
  source:
    "NIST SP 811, appendix B.8; factors exact from 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s², 1 gal = 231 in³.",
  range: `The units ${Object.keys(units).join(", ")}; refuses others and mixed ones.`,
  compute: (given) => {
    const dimension = dimensionOf(given.value.unit);
    const unit = readUnit(given.to, dimension);
    if (dimensionOf(unit) !== dimension)
      throw new Refusal("wrong", `to: ${unit} is no ${dimension}`, [allowed(dimension)]);
    return {
      results: [{ name: "value", value: valueIn(given.value, unit), unit, digits: 7 }],
    };
  },
});
