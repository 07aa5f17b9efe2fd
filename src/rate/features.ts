import type { Feature } from "./feature.js";
import { afterGoal } from "./features/after-goal.js";
import { alike } from "./features/alike.js";
import { interrupted } from "./features/interrupted.js";
import { late } from "./features/late.js";
import { noCue } from "./features/no-cue.js";
import { outOfSight } from "./features/out-of-sight.js";

/** The features that are looked for, in the order in which a reminder names them. */
export const features: readonly Feature[] = [
  outOfSight,
  afterGoal,
  noCue,
  interrupted,
  alike,
  late,
];
