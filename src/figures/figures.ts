import { clampLoad } from "./clamp-load.js";
import { clearanceHole } from "./clearance-hole.js";
import { proofLoad } from "./proof-load.js";
import type { FigureRule } from "./rule.js";
import { stressArea } from "./stress-area.js";
import { tapDrill } from "./tap-drill.js";
import { torque } from "./torque.js";
import { torqueCheck } from "./torque-check.js";

/** Every computed figure, in the order in which they are listed. */
export const figures: readonly FigureRule[] = [
  stressArea,
  proofLoad,
  torque,
  torqueCheck,
  clampLoad,
  tapDrill,
  clearanceHole,
];
