import type { Step } from "../../../src/model/plan.js";
import type { World } from "../../../src/model/world.js";
import { closing, count, joins, oneUse, welds } from "./laws-of-counts.js";
import { access, cover, returned, trialFit } from "./laws-of-parts.js";
import { holds, hotWork, record, support, waiting, work } from "./laws-of-work.js";
import { Tale } from "./tale.js";

/** For each law, whether a whole plan breaks it; written from the design, not from `src/prove`. */
const broken: ReadonlyMap<number, (tale: Tale) => boolean> = new Map([
  [1, access],
  [2, cover],
  [3, returned],
  [4, count],
  [5, oneUse],
  [6, joins],
  [7, holds],
  [8, record],
  [9, hotWork],
  [10, waiting],
  [11, trialFit],
  [12, welds],
  [13, support],
  [14, closing],
  [15, work],
]);

/** The numbers of the laws that the model knows. */
export const numbers = [...broken.keys()];

/** The laws that these steps break on this car. */
export function violated(world: World, steps: readonly Step[]): Set<number> {
  const tale = new Tale(world, steps);
  return new Set([...broken].filter(([, breaks]) => breaks(tale)).map(([law]) => law));
}
