import type { StepFixing } from "../model/plan.js";
import { type Change, type Thing, keyOf } from "../model/world.js";

/** The fixings that a step's changes act on, with what the sheet must say of them. */
export function fixingsOf(
  does: readonly Change[],
  things: ReadonlyMap<string, Thing>,
): StepFixing[] {
  return does.flatMap(({ object: kind, place, count = 0, fresh = 0 }) => {
    const fixing = things.get(keyOf(kind, place))?.fixing;
    if (!fixing) return [];
    const { kindName: name, kindPlural: plural, size, where, full, oneUse, torque } = fixing;
    return [
      {
        kind,
        place,
        count,
        oneUse,
        fresh,
        full,
        name,
        plural,
        size,
        where,
        ...(torque ? { torque } : {}),
      },
    ];
  });
}
