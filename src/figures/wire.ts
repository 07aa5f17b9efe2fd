import { quantity } from "./input.js";
import { type Quantity, valueIn } from "./quantity.js";

/** Density of carbon steel in g/mm³: 7.85 g/cm³, EN 1991-1-1 annex A (77.0 to 78.5 kN/m³), from memory. */
export const steelDensity = 7.85e-3;

/** The diameter of a welding wire, as an input. */
export const wire = quantity("diameter of the wire", "length", [0.5, 1.7, "mm"]);

/** Cross-section of a round wire or hole, mm². */
export function roundOf(diameter: Quantity<"length">): number {
  return (Math.PI / 4) * valueIn(diameter, "mm") ** 2;
}
