import { quantity } from "./input.js";
import { coefficientOf, friction, torqueCaution, torqueRange, torqueSource } from "./joint.js";
import { type Quantity, valueIn } from "./quantity.js";
import { figure, span } from "./rule.js";
import { proofLoadOf, strength } from "./strength.js";
import { type Thread, thread } from "./thread.js";

/** The torque that is quoted, as an input. */
export const quoted = quantity("the torque that is quoted", "torque", [0.5, 500, "N·m"]);

/** The least and most tension in N that a torque can make, over the torque coefficient. */
export function clampOf(
  torque: Quantity<"torque">,
  thread: Thread,
  [low, high]: readonly [number, number],
): [least: number, most: number] {
  const force = (k: number): number => (1000 * valueIn(torque, "N·m")) / (k * thread.diameter);
  return [force(high), force(low)];
}

/** Clamp load that a torque makes, and its share of the proof load. */
export const clampLoad = figure({
  name: "clamp-load",
  about: "the tension that a torque makes in a bolt",
  inputs: { thread, class: strength, torque: quoted, ...friction },
  formula: "F = T / (K · D); share = F / (As · Sp)",
  source: torqueSource,
  range: torqueRange,
  caution: torqueCaution,
  compute: (given) => {
    const [least, most] = clampOf(given.torque, given.thread, coefficientOf(given));
    const percent = 100 / proofLoadOf(given.thread, given.class);
    return {
      results: [
        { name: "clamp load", ...span(least, most), unit: "N" },
        { name: "share of proof load", ...span(least * percent, most * percent), unit: "%" },
      ],
      notes: [
        "Of a torque, about nine tenths go into friction: oil on a dry thread raises the clamp load without any change at the wrench.",
      ],
    };
  },
});
