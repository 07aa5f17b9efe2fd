import type { Sheet } from "./sheet.js";
import { apprentice } from "./sheets/apprentice.js";
import { checklist } from "./sheets/checklist.js";
import { count } from "./sheets/count.js";
import { guide } from "./sheets/guide.js";
import { handover } from "./sheets/handover.js";
import { hazards } from "./sheets/hazards.js";
import { gather } from "./sheets/gather.js";
import { road } from "./sheets/road.js";
import { layers } from "./sheets/layers.js";
import { times } from "./sheets/times.js";
import { worth } from "./sheets/worth.js";
import { labels } from "./sheets/labels.js";
import { measurements } from "./sheets/measurements.js";
import { welds } from "./sheets/welds.js";

/** Every sheet of a pack, in the order in which they lie in it. */
export const sheets: readonly Sheet[] = [
  guide,
  worth,
  gather,
  hazards,
  layers,
  times,
  checklist,
  count,
  labels,
  measurements,
  welds,
  road,
  handover,
  apprentice,
];
