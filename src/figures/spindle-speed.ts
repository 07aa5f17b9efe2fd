import { choice, optional, otherwise, quantity } from "./input.js";
import { type Quantity, valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure, span } from "./rule.js";

const tools = ["drill", "hole-saw", "spot-weld-cutter"] as const;
const materials = ["mild-steel", "high-strength-steel", "stainless-steel", "aluminium"] as const;

/** Cutting speed in ft/min, high-speed steel in mild steel: drill, a handbook and a shop reference; hole saw, a locksmith journal (80) and a maker's table (about 90). */
const mildSteel: Partial<Record<(typeof tools)[number], readonly [number, number]>> = {
  drill: [80, 100],
  "hole-saw": [80, 90],
};

type Given = { tool: (typeof tools)[number]; material: (typeof materials)[number] };

/** The cutting speeds in m/min: the one entered, or the published range; where none is published, a refusal. */
function speedsOf(given: Given & { speed: Quantity<"speed"> | undefined }): [number, number] {
  if (given.speed) {
    const speed = valueIn(given.speed, "m/min");
    return [speed, speed];
  }
  const range = given.material === "mild-steel" ? mildSteel[given.tool] : undefined;
  if (range === undefined)
    throw new Refusal("refused", `no published speed for a ${given.tool} in ${given.material}`, [
      "Enter the cutter maker's own: speed=20 m/min.",
    ]);
  const [least, most] = range.map((value) => valueIn({ value, unit: "ft/min" }, "m/min"));
  return [least ?? 0, most ?? 0];
}

/** Spindle speed of a drill or cutter from its diameter and the cutting speed, rpm. */
export const spindleSpeed = figure({
  name: "spindle-speed",
  about: "how fast a drill or cutter may turn",
  inputs: {
    tool: choice("the tool", tools),
    diameter: quantity("diameter of the tool", "length", [1, 80, "mm"]),
    material: otherwise(choice("what is cut", materials), "mild-steel"),
    speed: optional(quantity("cutting speed, from the cutter's maker", "speed", [1, 150, "m/min"])),
  },
  formula: "n = v / (π · d); in inches 12 · SFM / (π · D)",
  source:
    "Handbook formula; drill in mild steel 80 to 100 ft/min, a handbook's table for plain carbon steels and a shop reference; hole saw 80 to 90 ft/min, a locksmith journal and a hole saw maker's table. No speed for spot-weld cutters is published.",
  range: "1 to 80 mm, high-speed steel; without an entered speed mild steel only.",
  caution:
    "The cutter maker's speed wins. Boron and other hot-formed steel wears high-speed steel at any speed.",
  compute: (given) => {
    const round = Math.PI * (valueIn(given.diameter, "mm") / 1000);
    const [least, most] = speedsOf(given);
    return {
      results: [{ name: "spindle speed", ...span(least / round, most / round), unit: "rpm" }],
    };
  },
});
