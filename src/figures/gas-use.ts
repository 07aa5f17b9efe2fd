import { number, otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** Shielding gas that a number of welds takes, L. */
export const gasUse = figure({
  name: "gas-use",
  about: "the shielding gas that a number of welds takes",
  inputs: {
    welds: number("welds", 1, 5000, { whole: true }),
    time: quantity("arc time of one weld", "time", [0.2, 600, "s"]),
    flow: otherwise(quantity("gas flow", "flow", [5, 25, "L/min"]), "12 L/min"),
    around: otherwise(
      quantity("time the gas flows before and after each weld", "time", [0, 30, "s"]),
      "2 s",
    ),
  },
  formula: "V = n · flow · (arc time + time before and after)",
  source:
    "Computed; flow on thin sheet 10 to 15 L/min, two power source manuals; the time before and after is common practice, set at the machine.",
  range: "5 to 25 L/min; refuses others. Leaks and purging come on top.",
  compute: (given) => {
    const seconds = valueIn(given.time, "s") + valueIn(given.around, "s");
    const volume = given.welds * valueIn(given.flow, "L/min") * (seconds / 60);
    return { results: [{ name: "gas", value: volume, unit: "L" }] };
  },
});
