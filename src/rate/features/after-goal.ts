import type { Step } from "../../model/plan.js";
import { putsOn } from "../../model/verbs.js";
import type { Feature } from "../feature.js";

/** After the goal: its part is in its place already (Reason 2002). */
export const afterGoal: Feature = {
  name: "after-goal",
  has: ({ step, steps }) => {
    const before = steps.slice(0, steps.indexOf(step));
    const same = (one: Step): boolean => one.task === step.task && one.position === step.position;
    return before.some((one) => same(one) && one.phase === step.phase && putsOn(one));
  },
};
