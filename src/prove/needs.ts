import { type Key, type Need, type StateNeed, changeKey } from "../model/world.js";
import type { Breach, Moment } from "./law.js";
import { type State, isOff } from "./state.js";

/** The needs of a change that belong to a law and are not met. */
export function unmet({ world, state, change }: Moment, law: Need["law"]): Breach[] {
  const needs = world.needs.get(changeKey(change));
  if (!needs) return [];
  return needs
    .filter((need) => need.law === law && !isMet(need, state))
    .map((need) => ({
      message: `'${changeKey(change)}' needs ${"done" in need ? `'${need.done}' done` : `${need.key} ${need.state}`} first`,
      related: [{ origin: need.origin, label: "asked for here" }],
    }));
}

function isMet(need: Need, state: State): boolean {
  return "done" in need ? state.done.has(need.done) : stateIs(state, need.key, need.state);
}

/** Which of these objects are not in the state that is asked for. */
export function lacking(needs: readonly StateNeed[], state: State): StateNeed[] {
  return needs.filter((need) => !stateIs(state, need.key, need.state));
}

const begun: Test = (state, key) => state.begun.has(key);

type Test = (state: State, key: Key) => boolean;

/** A fixing is off when the last one is out, a part when it is out of the way. */
function isOut(state: State, key: Key): boolean {
  const tally = state.tallies.get(key);
  return tally ? tally.in <= 0 : isOff(state, key);
}

const tests: Readonly<Record<string, Test>> = {
  off: isOut,
  on: (state, key) => state.parts.get(key) === "on",
  eased: (state, key) => state.parts.get(key) !== "on",
  live: (state, key) => !state.isolated.has(key),
  isolated: (state, key) => state.isolated.has(key),
  released: (state, key) => state.released.has(key),
  parted: (state, key) => state.parted.has(key),
  joined: (state, key) => !state.parted.has(key),
  braced: begun,
  shielded: begun,
  raised: begun,
  opened: begun,
  set: begun,
};

/** Whether an object is in a state, by its word: that of a part, a supply, a join, or of work done on it. */
function stateIs(state: State, key: Key, word: string): boolean {
  const worked = (): boolean => state.worked.get(key)?.has(word) === true;
  return tests[word]?.(state, key) ?? (state.settings.get(key) === word || worked());
}
