import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";
import { roundOf, steelDensity, wire } from "./wire.js";

/** Length of a mass of steel wire, m. */
export const wireLength = figure({
  name: "wire-length",
  about: "how long a mass of welding wire is",
  inputs: { wire, mass: quantity("mass of the wire", "mass", [1, 50_000, "g"]) },
  formula: "L = m / (ρ · π/4 · D²), ρ = 7.85 g/cm³",
  source: "Computed; density of carbon steel as EN 1991-1-1 annex A, from memory.",
  range: "Solid steel wire of 0.5 to 1.7 mm; refuses others, cored wire too by its nature.",
  compute: (given) => {
    const millimetres = valueIn(given.mass, "g") / (steelDensity * roundOf(given.wire));
    return { results: [{ name: "length", value: millimetres / 1000, unit: "m" }] };
  },
});
