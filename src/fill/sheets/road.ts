import { placeOf } from "../place.js";
import { type Sheet, headOf } from "../sheet.js";
import { byRole, holdsOf } from "../stops.js";

/** Every release and permit without which the car stays off the road, by who gives it; it lies with the key. */
export const road: Sheet = {
  name: "road",
  applies: ({ steps }) => steps.some(({ hold }) => hold),
  view: (input, words) => ({
    ...headOf(input),
    roles: byRole(holdsOf(input.steps)).map(({ role, holds }) => ({
      role,
      holds: holds.map((hold) => ({ ...hold, where: placeOf(hold, words) })),
    })),
  }),
};
