import { number, otherwise } from "./input.js";
import { figure } from "./rule.js";

/** How many bits or cutters a job needs, from the life that the shop has found. */
export const bitsNeeded = figure({
  name: "bits-needed",
  about: "how many bits or cutters to have ready",
  inputs: {
    holes: number("holes to drill", 1, 5000, { whole: true }),
    life: number("holes that one bit does, as the shop has found", 1, 5000, { whole: true }),
    spare: otherwise(number("bits over, against breakage", 0, 20, { whole: true }), "1"),
  },
  formula: "⌈holes / life⌉ + spare",
  source: "Computed. No life of a spot-weld cutter is published: the shop enters its own.",
  range: "1 to 5000 holes; refuses others.",
  compute: ({ holes, life, spare }) => ({
    results: [{ name: "bits", value: Math.ceil(holes / life) + spare, unit: "1" }],
  }),
});
