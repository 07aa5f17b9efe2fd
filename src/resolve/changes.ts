import { minutesOf } from "../figures/minutes.js";
import { effectOf } from "../model/verbs.js";
import type { Change, Thing } from "../model/world.js";
import type { RecipeStep } from "../model/recipe-step.js";

/** The change that a verb makes to one object of this car, or nothing where there is nothing to do. */
export function changeTo(verb: string, step: RecipeStep, thing: Thing): Change | undefined {
  const effect = effectOf(verb);
  const change: Change = { verb, object: thing.name, place: thing.position };
  if (step.reason !== undefined) change.reason = step.reason;
  if (thing.fixing) return fixingChange(change, effect, thing.fixing);
  if (step.round !== undefined) change.round = step.round;
  if (step.to !== undefined) change.to = step.to;
  if (step.count !== undefined) change.count = step.count;
  const minutes = verb === "watch" ? minutesOf(step.wait) : undefined;
  if (minutes !== undefined) change.minutes = minutes;
  if (thing.absent === "fit-new" && effect === "on") change.verb = "fit-new";
  return change;
}

type Facts = NonNullable<Thing["fixing"]>;

function fixingChange(
  change: Change,
  effect: string | undefined,
  { full, present, extra, sound, oneUse, instead, note }: Facts,
): Change | undefined {
  if (effect === "out")
    return present === 0
      ? undefined
      : { ...change, verb: instead?.verb ?? change.verb, count: present };
  if (effect === "leave-out")
    return { ...change, count: change.count ?? extra, reason: change.reason ?? note ?? "" };
  const fresh = oneUse ? full : Math.max(0, full - sound);
  return { ...change, count: full, fresh };
}
