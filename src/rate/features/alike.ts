import type { Feature } from "../feature.js";

/** One of several alike: another step of the way back reads the same (Reason 2002). */
export const alike: Feature = {
  name: "alike",
  has: ({ step, rated }) => rated.some((one) => one !== step && one.says === step.says),
};
