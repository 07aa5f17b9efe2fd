import { clampOf, quoted } from "./clamp-load.js";
import { coefficientOf, friction, torqueCaution, torqueRange, torqueSource } from "./joint.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { proofLoadOf, strength } from "./strength.js";
import { thread } from "./thread.js";

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
    const shares = clampOf(given.torque, given.thread, coefficients).map((load) => load / proof);
    const [least = 0, most = 0] = shares;
    const { value, unit } = given.torque;
    const limits = coefficients.map((k) => (k * given.thread.diameter * proof) / 1000);
    if (least > 1) throw tooHigh(`${value} ${unit}`, given.thread.name, limits, value / 10, unit);
    return {
      results: [
        { name: "verdict", value: verdictOf(least, most) },
        { name: "share of proof load", value: 100 * least, to: 100 * most, unit: "%" },
      ],
    };
  },
});

function verdictOf(least: number, most: number): string {
  if (most < 0.1) return "far below what this bolt is for: is the unit right?";
  return most <= 1 ? "within" : "within only where the threads rub enough";
}

function tooHigh(
  text: string,
  name: string,
  [, limit = 0]: readonly number[],
  tenth: number,
  unit: string,
): Refusal {
  const most = `At most ${limit.toPrecision(3)} N·m reaches the proof load.`;
  return new Refusal("refused", `${text} stretches ${name} beyond its proof load`, [
    most,
    `Was ${Number(tenth.toPrecision(6))} ${unit} meant?`,
  ]);
}
