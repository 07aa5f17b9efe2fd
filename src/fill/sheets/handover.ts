import { openStates } from "../open-now.js";
import { type Sheet, headOf } from "../sheet.js";
import { type NumberedHold, byRole, holdsOf, stopsOf } from "../stops.js";

/** What one person tells the next at the car, and the releases without which the car stays off the road. */
export const handover: Sheet = {
  name: "handover",
  applies: ({ steps }) => steps.length > 0,
  view: (input) => ({
    ...headOf(input),
    open: openStates(input.steps),
    stops: stopsOf(input.steps),
    roles: byRole(holdsOf(input.steps).filter(keepsOffTheRoad)),
  }),
};

/** Holds on what is critical on the road, and the last ones of the job. */
function keepsOffTheRoad({ critical, phase }: NumberedHold): boolean {
  return critical !== "" || phase === "close";
}
