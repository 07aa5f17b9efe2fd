import { bead } from "./bead.js";
import { bitsNeeded } from "./bits-needed.js";
import { clampLoad } from "./clamp-load.js";
import { clearanceHole } from "./clearance-hole.js";
import { convert } from "./convert.js";
import { coverage } from "./coverage.js";
import { deposition } from "./deposition.js";
import { diagonals } from "./diagonals.js";
import { fireWatch } from "./fire-watch.js";
import { gasUse } from "./gas-use.js";
import { gauge } from "./gauge.js";
import { generalTolerance } from "./general-tolerance.js";
import { gmawStart } from "./gmaw-start.js";
import { inchDrill } from "./inch-drill.js";
import { lensShade } from "./lens-shade.js";
import { plugWeldCount } from "./plug-weld-count.js";
import { plugWeldHole } from "./plug-weld-hole.js";
import { plugWeldWire } from "./plug-weld-wire.js";
import { proofLoad } from "./proof-load.js";
import { reading } from "./reading.js";
import { sides } from "./sides.js";
import type { FigureRule } from "./rule.js";
import { spindleSpeed } from "./spindle-speed.js";
import { spotWeld } from "./spot-weld.js";
import { square } from "./square.js";
import { stressArea } from "./stress-area.js";
import { tapDrill } from "./tap-drill.js";
import { torqueCheck } from "./torque-check.js";
import { torque } from "./torque.js";
import { weldSpacing } from "./weld-spacing.js";
import { wireLength } from "./wire-length.js";
import { wireSpeed } from "./wire-speed.js";

/** Every computed figure, in the order in which they are listed. */
export const figures: readonly FigureRule[] = [
  stressArea,
  proofLoad,
  torque,
  torqueCheck,
  clampLoad,
  tapDrill,
  clearanceHole,
  plugWeldHole,
  weldSpacing,
  plugWeldCount,
  spotWeld,
  gmawStart,
  wireSpeed,
  lensShade,
  spindleSpeed,
  bitsNeeded,
  wireLength,
  deposition,
  plugWeldWire,
  gasUse,
  coverage,
  bead,
  fireWatch,
  square,
  diagonals,
  sides,
  reading,
  generalTolerance,
  convert,
  inchDrill,
  gauge,
];
