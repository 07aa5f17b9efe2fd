import type { Feature } from "../feature.js";

/** After an interruption: a hold, a pause or a wait stands before it (Reason 2002). */
export const interrupted: Feature = {
  name: "interrupted",
  has: ({ step, steps }) => {
    const before = steps[steps.indexOf(step) - 1];
    return (
      before !== undefined &&
      (before.hold !== undefined || before.checks.length > 0 || before.wait !== "")
    );
  },
};
