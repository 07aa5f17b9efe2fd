import { hoursOf, paidHoursOf } from "../hours.js";
import { type Sheet, headOf } from "../sheet.js";
import { holdsOf } from "../stops.js";

/** Whether the job is worth it: hours, skill, risk and cost, before anything comes off. */
export const worth: Sheet = {
  name: "worth",
  applies: ({ brief }) => brief.worth !== undefined,
  view: (input) => {
    const [low, likely, high] = input.brief.worth?.hours ?? [];
    const estimate = low === undefined ? undefined : { low, likely, high };
    return {
      ...headOf(input),
      hours: hoursOf(input.steps),
      paid: paidHoursOf(input.steps),
      estimate,
      decisions: holdsOf(input.steps).filter(({ kind }) => kind === "decision"),
    };
  },
};
