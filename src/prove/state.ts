import type { Key, World } from "../model/world.js";

/** The tally of one fixing at one place. */
export interface Tally {
  in: number;
  off: number;
  added: number;
  back: number;
  renewed: number;
  leftOut: number;
}

/** The car at one moment of a plan. */
export interface State {
  tallies: Map<Key, Tally>;
  /** on, off, eased, trial, gone (cut out), absent, left-off. */
  parts: Map<Key, string>;
  /** Settings left by a move. */
  settings: Map<Key, string>;
  parted: Set<Key>;
  /** Joins that were parted and have not been proven since they were joined again. */
  unproven: Set<Key>;
  isolated: Set<Key>;
  released: Set<Key>;
  begun: Set<Key>;
  /** Every change made so far, by its key. */
  done: Set<string>;
  /** Work states reached, per object, and the number of the step that last worked on it. */
  worked: Map<Key, Set<string>>;
  releasedFor: Set<Key>;
}

/** The car before the first step. */
export function startOf(world: World): State {
  const state: State = {
    tallies: new Map(),
    parts: new Map(),
    settings: new Map(),
    parted: new Set(),
    unproven: new Set(),
    isolated: new Set(),
    released: new Set(),
    begun: new Set(),
    done: new Set(),
    worked: new Map(),
    releasedFor: new Set(),
  };
  for (const thing of world.things.values()) {
    if (thing.fixing)
      state.tallies.set(thing.key, {
        in: thing.fixing.present,
        off: 0,
        added: 0,
        back: 0,
        renewed: 0,
        leftOut: 0,
      });
    if (thing.is === "part")
      state.parts.set(thing.key, thing.absent === undefined ? "on" : "absent");
  }
  return state;
}

/** Whether a part is out of the way. */
export function isOff(state: State, key: Key): boolean {
  return (state.parts.get(key) ?? "off") !== "on" && state.parts.get(key) !== "eased";
}
