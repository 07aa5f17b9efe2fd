import { type Need, changeKey } from "../model/world.js";
import type { Breach, Moment } from "./law.js";
import { type State, isOff } from "./state.js";

/** The needs of a change that belong to a law and are not met. */
export function unmet({ world, state, change }: Moment, law: Need["law"]): Breach[] {
  const needs = world.needs.get(changeKey(change)) ?? [];
  return needs
    .filter((need) => need.law === law && !isMet(need, state))
    .map((need) => ({
      message: `'${changeKey(change)}' needs ${"done" in need ? `'${need.done}' done` : `${need.key} ${need.state}`} first`,
      related: [{ origin: need.origin, label: "asked for here" }],
    }));
}

function isMet(need: Need, state: State): boolean {
  if ("done" in need) return state.done.has(need.done);
  const { key } = need;
  const tests: Record<string, () => boolean> = {
    off: () => isOff(state, key),
    on: () => state.parts.get(key) === "on",
    eased: () => state.parts.get(key) !== "on",
    live: () => !state.isolated.has(key),
    isolated: () => state.isolated.has(key),
    released: () => state.released.has(key),
    parted: () => state.parted.has(key),
    joined: () => !state.parted.has(key),
  };
  return tests[need.state]?.() ?? state.settings.get(key) === need.state;
}
