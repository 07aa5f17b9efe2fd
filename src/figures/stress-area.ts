import { figure } from "./rule.js";
import { stressAreaOf, thread } from "./thread.js";

/** Tensile stress area of a screw thread, mm². */
export const stressArea = figure({
  name: "stress-area",
  about: "the cross-section of a thread that bears tension",
  inputs: { thread },
  formula: "metric As = π/4 · (d − 0.938194·P)²; unified At = π/4 · (D − 0.974279/n)²",
  source:
    "ISO 898-1, nominal stress area; ASME B1.1, as Shigley, Mechanical Engineering Design, 9th ed., table 8-2.",
  range: "M3 to M20 and #8 to 3/4 in, usual pitches; refuses other threads.",
  compute: (given) => ({
    results: [{ name: "stress area", value: stressAreaOf(given.thread), unit: "mm²" }],
  }),
});
