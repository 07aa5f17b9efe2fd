import { choice, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** Inches per minute of wire for each ampere, by wire diameter in mm: 0.6 and 0.9 from a power source manual, 0.8 from memory. */
const perAmpere = { "0.6": 3.5, "0.8": 2, "0.9": 1.6 } as const;

/** Wire speed to begin with, from the current, m/min. */
export const wireSpeed = figure({
  name: "wire-speed",
  about: "the wire speed to begin with, from the current",
  inputs: {
    current: quantity("welding current", "current", [20, 200, "A"]),
    wire: choice("wire diameter in mm", Object.keys(perAmpere) as (keyof typeof perAmpere)[]),
  },
  formula:
    "speed = current · factor; 3.5, 2.0 and 1.6 in/min per ampere for 0.6, 0.8 and 0.9 mm wire",
  source:
    "A power source manual for 0.6 mm (0.023 in) and 0.9 mm (0.035 in); 0.8 mm (0.030 in) from memory.",
  range: "20 to 200 A, solid steel wire; refuses others.",
  caution: "A starting value only: set it on a test piece.",
  compute: (given) => {
    const inches = valueIn(given.current, "A") * perAmpere[given.wire];
    const value = valueIn({ value: inches, unit: "in/min" }, "m/min");
    return { results: [{ name: "wire speed", value, unit: "m/min" }] };
  },
});
