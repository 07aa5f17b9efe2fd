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

/** The welds of a joint: how many were drilled out and put back, and what was done to it since the last weld. */
export interface Welds {
  out: number;
  back: number;
  parted: boolean;
  drilled: boolean;
  opened: boolean;
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
  /** Work states reached, per object. */
  worked: Map<Key, Set<string>>;
  releasedFor: Set<Key>;
  /** Objects that were worked on, not only looked at. */
  touched: Set<Key>;
  /** What somebody who did not do the work has released since it was last worked on. */
  inspected: Set<Key>;
  /** Parts that came off, were eased or were renewed, and structural joints that were welded. */
  handled: Set<Key>;
  /** Sparks have flown and the fire has not been watched since. */
  hot: boolean;
  /** joint: what was done to its welds. */
  welds: Map<Key, Welds>;
  /** The change made last, by its key. */
  last?: string;
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
    touched: new Set(),
    inspected: new Set(),
    handled: new Set(),
    hot: false,
    welds: new Map(),
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

/** Whether a part is out of the car, and not in on trial either. */
export function isAway(state: State, key: Key): boolean {
  return isOff(state, key) && state.parts.get(key) !== "trial";
}

/** How many lie in the bag; what is wanted beyond that is added: new, or missing since the car came in. */
export function looseOf(tally: Tally | undefined): number {
  if (!tally) return 0;
  const { off, added, back, renewed, leftOut } = tally;
  return off + added - back - renewed - leftOut;
}
