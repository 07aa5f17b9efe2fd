import type { Change, Key, Thing, World } from "../model/world.js";
import type { State } from "./state.js";

/** Counts the welds of a joint; one that is opened has new holes, and gaps that must be compared again. */
export function workJoint(state: State, key: Key, { verb, count = 0 }: Change, world: World): void {
  const welds = state.welds.get(key) ?? {
    out: 0,
    back: 0,
    parted: false,
    drilled: false,
    opened: false,
  };
  state.welds.set(key, welds);
  if (verb === "weld") {
    welds.back += count;
    welds.parted = false;
    welds.drilled = false;
  }
  if (verb === "drill") {
    welds.out += count;
    welds.drilled = true;
    state.worked.get(key)?.delete("closed");
  }
  if (verb === "separate") welds.parted = true;
  if (verb === "drill" || verb === "separate") opened(state, key, world);
}

function opened(state: State, key: Key, { things, structural }: World): void {
  const welds = state.welds.get(key);
  if (welds) welds.opened = true;
  if (things.get(key)?.structural !== true) return;
  for (const gap of structural?.compare ?? []) state.worked.get(gap)?.delete("compared");
}

/** Whether a joint is parted, or has fewer welds again than were drilled out. */
export function isOpenJoint(state: State, key: Key): boolean {
  const { out = 0, back = 0, parted = false, drilled = false } = state.welds.get(key) ?? {};
  return parted || drilled || out > back;
}

/** Structural joints that are parted and not yet welded in full. */
export function openJoints(world: World, state: State): Thing[] {
  const open = [...state.welds.keys()].filter((key) => isOpenJoint(state, key));
  if (open.length === 0) return [];
  return [...world.things.values()].filter(
    ({ key, structural }) => structural === true && open.includes(key),
  );
}
