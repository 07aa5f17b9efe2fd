import { clampOf, quoted } from "./clamp-load.js";
import { coefficientOf, friction, torqueCaution, torqueRange, torqueSource } from "./joint.js";
import type { Quantity } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure, span } from "./rule.js";
import { proofLoadOf, strength } from "./strength.js";
import { type Thread, thread } from "./thread.js";

/** Whether a quoted torque stays within what the bolt can bear; refuses one that is above it however the threads rub. */
export const torqueCheck = figure({
  name: "torque-check",
  about: "whether a quoted torque is within what the bolt can bear",
  inputs: { thread, class: strength, torque: quoted, ...friction },
  formula: "T / (K · D) ≤ As · Sp, over the range of K",
  source: torqueSource,
  range: torqueRange,
  caution: torqueCaution,
  compute: (given) => {
    const coefficients = coefficientOf(given);
    const proof = proofLoadOf(given.thread, given.class);
    const [least, most] = clampOf(given.torque, given.thread, coefficients);
    const limit = (coefficients[1] * given.thread.diameter * proof) / 1000;
    if (least > proof * (1 + 1e-9)) throw tooHigh(given, limit);
    return {
      results: [
        { name: "verdict", value: verdictOf(most / proof) },
        {
          name: "share of proof load",
          ...span((100 * least) / proof, (100 * most) / proof),
          unit: "%",
        },
      ],
    };
  },
});

function verdictOf(most: number): string {
  if (most < 0.1) return "far below what this bolt is for: is the unit right?";
  return most <= 1 + 1e-9 ? "within" : "within only where the threads rub enough";
}

function tooHigh(given: { thread: Thread; torque: Quantity<"torque"> }, limit: number): Refusal {
  const { value, unit } = given.torque;
  const message = `${value} ${unit} stretches ${given.thread.name} beyond its proof load`;
  return new Refusal("refused", message, [
    `At most ${limit.toPrecision(3)} N·m reaches the proof load.`,
    `Was ${Number((value / 10).toPrecision(6))} ${unit} meant?`,
  ]);
}
