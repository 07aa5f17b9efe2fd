import { number, otherwise } from "./input.js";
import { coefficientOf, friction, torqueCaution, torqueRange, torqueSource } from "./joint.js";
import { figure, span } from "./rule.js";
import { proofLoadOf, strength } from "./strength.js";
import { thread } from "./thread.js";

/** Tightening torque from thread, class and friction, as a range over the torque coefficient, N·m. */
export const torque = figure({
  name: "torque",
  about: "the tightening torque of a bolt, as a range over how the threads rub",
  inputs: {
    thread,
    class: strength,
    ...friction,
    preload: otherwise(number("preload as a share of the proof load", 0.1, 0.9), "0.75"),
  },
  formula: "T = K · D · F, with F = preload · As · Sp",
  source: torqueSource,
  range: torqueRange,
  caution: torqueCaution,
  compute: (given) => {
    const clamp = given.preload * proofLoadOf(given.thread, given.class);
    const [low, high] = coefficientOf(given);
    const made = (k: number): number => (k * given.thread.diameter * clamp) / 1000;
    return {
      results: [
        { name: "torque", ...span(made(low), made(high)), unit: "N·m" },
        { name: "clamp load", value: clamp, unit: "N" },
      ],
    };
  },
});
