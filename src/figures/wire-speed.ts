import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { wire } from "./wire.js";

/** Inches per minute of wire for each ampere, by wire diameter in mm: 0.6 and 0.9 from a power source manual, 0.8 from memory. */
const perAmpere: readonly (readonly [wire: number, inches: number])[] = [
  [0.6, 3.5],
  [0.8, 2],
  [0.9, 1.6],
];

/** The factor of the wire that is sold under this diameter: within 0.04 mm, as 0.030 in for 0.8 mm. */
function factorOf(millimetres: number): number {
  const row = perAmpere.find(([wire]) => Math.abs(wire - millimetres) <= 0.04);
  if (row !== undefined) return row[1];
  throw new Refusal("refused", `no published factor for ${millimetres} mm wire`, [
    "There is one for 0.6, 0.8 and 0.9 mm.",
  ]);
}

/** Wire speed to begin with, from the current, m/min. */
export const wireSpeed = figure({
  name: "wire-speed",
  about: "the wire speed to begin with, from the current",
  inputs: {
    current: quantity("welding current", "current", [20, 200, "A"]),
    wire,
  },
  formula:
    "speed = current · factor; 3.5, 2.0 and 1.6 in/min per ampere for 0.6, 0.8 and 0.9 mm wire",
  source:
    "A power source manual for 0.6 mm (0.023 in) and 0.9 mm (0.035 in); 0.8 mm (0.030 in) from memory.",
  range: "20 to 200 A, solid steel wire; refuses others.",
  caution: "A starting value only: set it on a test piece.",
  compute: (given) => {
    const inches = valueIn(given.current, "A") * factorOf(valueIn(given.wire, "mm"));
    const value = valueIn({ value: inches, unit: "in/min" }, "m/min");
    return { results: [{ name: "wire speed", value, unit: "m/min" }] };
  },
});
