import type { Feature } from "../feature.js";

/** Late: it stands in the last quarter of the way back (Reason 2002). */
export const late: Feature = {
  name: "late",
  has: ({ step, rated }) => rated.indexOf(step) >= rated.length * 0.75,
};
