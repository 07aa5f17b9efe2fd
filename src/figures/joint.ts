import { type Input, choice, number, optional, otherwise } from "./input.js";

/** The torque coefficient K from least to most: plain and black finish, Shigley 9th ed. table 8-15 (0.30) with a metric torque-tension chart (0.20); zinc, the chart (0.17) with Shigley (0.20, from memory); lubricated, the chart (0.15) with Shigley (0.18); unknown, the range met in practice, Mechanical Fastening, Joining, and Assembly p. 85. */
const coefficients = {
  plain: [0.2, 0.3],
  zinc: [0.17, 0.2],
  lubricated: [0.15, 0.18],
  unknown: [0.1, 0.3],
} as const;

/** How the threads rub. */
export type Condition = keyof typeof coefficients;

/** The inputs from which the torque coefficient comes. */
export const friction: {
  condition: Input<Condition>;
  k: Input<number | undefined>;
} = {
  condition: otherwise(
    choice("how the threads rub", Object.keys(coefficients) as Condition[]),
    "unknown",
  ),
  k: optional(number("the torque coefficient K, where it is known", 0.08, 0.35)),
};

/** The torque coefficient as a range; a known one stands for itself. */
export function coefficientOf({
  condition,
  k,
}: {
  condition: Condition;
  k: number | undefined;
}): readonly [least: number, most: number] {
  return k === undefined ? coefficients[condition] : [k, k];
}

/** What every computed torque carries. */
export const torqueCaution =
  "The maker's manual always wins. For seat, belt, steering, brake and structural fixings this is only a plausibility check, never a value to tighten to; thin sheet or a weld nut can strip long before the bolt's own limit.";

/** Where every torque figure holds. */
export const torqueRange =
  "M3 to M20 and 1/4 to 3/4 in, steel bolt and nut of the same strength, rigid joint, tightened by hand with a steady wrench; refuses other threads and classes.";

/** Where the torque relation comes from. */
export const torqueSource =
  "Shigley, Mechanical Engineering Design, eq. 8-27 and table 8-15; preload of a joint that is undone again, 75 % of proof load, eq. 8-30 as cited; K of lubricated, zinc and plain threads from a metric torque-tension chart; range of K from Mechanical Fastening, Joining, and Assembly p. 85.";
