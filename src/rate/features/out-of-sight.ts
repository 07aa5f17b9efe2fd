import { putsOn } from "../../model/verbs.js";
import type { Feature } from "../feature.js";

/** Out of sight: a part that goes on later hides it (Reason 2002). */
export const outOfSight: Feature = {
  name: "out-of-sight",
  has: ({ step, steps }) => {
    const later = steps.slice(steps.indexOf(step) + 1).filter(putsOn);
    return later.some((one) => one.hides.some((key) => step.touches.includes(key)));
  },
};
