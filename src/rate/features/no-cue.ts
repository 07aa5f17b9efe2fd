import type { Feature } from "../feature.js";

/** No cue: the step before it is about something else (Reason 2002). */
export const noCue: Feature = {
  name: "no-cue",
  has: ({ step, steps }) => {
    const before = steps[steps.indexOf(step) - 1];
    return before?.task !== step.task || before.position !== step.position;
  },
};
