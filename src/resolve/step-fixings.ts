import type { StepFixing } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Change, type Thing, keyOf } from "../model/world.js";

/** The fixings that a step's changes act on, with what the sheet must say of them. */
export function fixingsOf(
  does: readonly Change[],
  things: ReadonlyMap<string, Thing>,
): StepFixing[] {
  return does.flatMap(({ verb, object: kind, place, count = 0, fresh = 0 }) => {
    const fixing = things.get(keyOf(kind, place))?.fixing;
    if (!fixing) return [];
    const { kindName, kindPlural, where, full, oneUse, torque } = fixing;
    const own = { name: kindName, plural: kindPlural, size: fixing.size };
    const out = effectOf(verb) === "out";
    const { name, plural, size } = (out ? fixing.instead : undefined) ?? own;
    const words = { name, plural, size, where };
    const numbers = { kind, place, count, oneUse, fresh, full };
    return [{ ...numbers, ...words, ...(torque ? { torque } : {}) }];
  });
}
