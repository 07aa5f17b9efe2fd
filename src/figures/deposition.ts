import { number, otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";
import { roundOf, steelDensity, wire } from "./wire.js";

/** How much steel a wire feed lays down in an hour of arc time, kg/h. */
export const deposition = figure({
  name: "deposition",
  about: "how much weld metal an hour of arc time lays down",
  inputs: {
    wire,
    speed: quantity("wire speed", "speed", [0.5, 25, "m/min"]),
    efficiency: otherwise(number("share of the wire that stays in the weld", 0.5, 1), "0.9"),
  },
  formula: "rate = ρ · π/4 · D² · speed · efficiency, ρ = 7.85 g/cm³",
  source:
    "Computed; the same as 13.1 · D² · WFS · EE (lb/h, in, in/min) of a deposition-rate article.",
  range: "Solid steel wire of 0.5 to 1.7 mm, 0.5 to 25 m/min; refuses others.",
  compute: (given) => {
    const perMetre = steelDensity * roundOf(given.wire);
    const rate = perMetre * valueIn(given.speed, "m/min") * 60 * given.efficiency;
    return { results: [{ name: "deposition rate", value: rate, unit: "kg/h" }] };
  },
});
