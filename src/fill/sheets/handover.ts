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

/** Every hold from the repair on; a hold on what is critical on the road, wherever it stands. */
function keepsOffTheRoad({ kind, critical, phase }: NumberedHold): boolean {
  return critical !== "" || (kind === "hold" && ["repair", "refit", "close"].includes(phase));
}
