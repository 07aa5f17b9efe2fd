import { effectOf, givesVapour, isOf, verbs } from "../model/verbs.js";
import { type Change, type Key, type Thing, type World, changeKey, keyOf } from "../model/world.js";
import { workJoint } from "./joints.js";
import { type State, type Tally, isAway, looseOf } from "./state.js";

type Apply = (state: State, key: Key, change: Change, world: World) => void;

/** A part that was handled is in no known setting: it may have been moved while it was out. */
const setPart =
  (to: string): Apply =>
  (state, key) => {
    state.parts.set(key, to);
    state.settings.delete(key);
  };

const effects: Record<string, Apply> = {
  out: (state, key, change) => {
    const tally = tallyOf(state, key);
    tally.in -= change.count ?? 0;
    tally.off += change.count ?? 0;
  },
  in: (state, key, change) => {
    const tally = tallyOf(state, key);
    const [count, fresh] = [change.count ?? 0, change.fresh ?? 0];
    tally.added += Math.max(0, count - looseOf(tally));
    tally.in += count;
    tally.back += count - fresh;
    tally.renewed += fresh;
  },
  "leave-out": (state, key, change) => {
    const tally = tallyOf(state, key);
    const count = change.count ?? 0;
    tally.added += Math.max(0, count - looseOf(tally));
    tally.leftOut += count;
  },
  "part-join": (state, key, _, world) => {
    state.parted.add(key);
    if (world.things.get(key)?.untested === undefined) state.unproven.add(key);
  },
  "make-join": (state, key) => void state.parted.delete(key),
  off: setPart("off"),
  on: setPart("on"),
  "cut-off": setPart("gone"),
  "fit-new": setPart("on"),
  "leave-off": (state, key, change, world) => {
    if (isAway(state, key)) setPart("left-off")(state, key, change, world);
  },
  ease: setPart("eased"),
  settle: setPart("on"),
  "try-in": setPart("trial"),
  "take-out": setPart("off"),
  isolate: (state, key) => void state.isolated.add(key),
  restore: (state, key) => void state.isolated.delete(key),
  begin: (state, key) => void state.begun.add(key),
  end: (state, key) => void state.begun.delete(key),
  move: (state, key, change) => void state.settings.set(key, change.to ?? ""),
  prove: (state, key, _, world) => {
    for (const join of world.things.get(key)?.proves ?? [])
      if (!state.parted.has(join)) state.unproven.delete(join);
  },
  release: (state, key, _, world) => {
    state.released.add(key);
    const { looksAt = [], independent = false } = world.things.get(key) ?? {};
    for (const seen of looksAt) {
      state.releasedFor.add(seen);
      if (independent) state.inspected.add(seen);
    }
  },
  work: (state, key, change, world) => {
    reach(state, key, change.verb, world);
    const full = world.hot?.watch ?? 0;
    if (isOf(change.verb, "hot")) state.hot = true;
    if (change.verb === "watch" && (change.minutes ?? 0) >= full) {
      state.hot = false;
      forgetBeforeSparks("look-at", state, world);
    }
    if (givesVapour(change.verb)) forgetBeforeSparks("test", state, world);
    if (world.things.get(key)?.is === "joint") workJoint(state, key, change, world);
    if (looking.has(change.verb)) return;
    state.touched.add(key);
    state.releasedFor.delete(key);
  },
};

/** Work gives its object a state; what is bared again has lost its finish. */
function reach(state: State, key: Key, verb: string, world: World): void {
  const reached = state.worked.get(key) ?? new Set<string>();
  const { finish = [] } = world.things.get(key) ?? {};
  if (verb === "bare") for (const word of finish) reached.delete(word);
  reached.add(verbs[verb]?.gives ?? verb);
  state.worked.set(key, reached);
}

/**
 * What holds for the sparks of one watch only: a test of the air until something in the shop gives off solvent,
 * a look at the shields until the watch is over and nobody guards them.
 */
function forgetBeforeSparks(verb: string, state: State, world: World): void {
  for (const { key, state: wanted } of world.hot?.needs ?? [])
    if (wanted === verbs[verb]?.gives) state.worked.get(key)?.delete(wanted);
}

/** Work that only looks leaves a release as it is. */
const looking = new Set(
  "inspect measure photograph look-at test compare mark find tally watch".split(" "),
);

const handling = new Set(
  "off on cut-off fit-new ease settle out in part-join make-join".split(" "),
);
const weldWork = new Set(["drill", "separate", "weld"]);

/** Makes one change to the state. */
export function apply(state: State, change: Change, world: World): void {
  const effect = effectOf(change.verb) ?? "work";
  const key = keyOf(change.object, change.place);
  if (handling.has(effect) || weldWork.has(change.verb)) handle(state, world.things.get(key));
  effects[effect]?.(state, key, change, world);
  state.done.add(changeKey(change));
  state.last = changeKey(change);
}

/** What was handled must be inspected again; doing up or undoing a fixing or a join handles what it holds. */
function handle(state: State, thing: Thing | undefined): void {
  const key = thing?.host ?? thing?.key;
  if (key === undefined) return;
  state.handled.add(key);
  state.inspected.delete(key);
}

/** The tally of a fixing; one that the range does not know starts at nothing. */
export function tallyOf(state: State, key: Key): Tally {
  const tally = state.tallies.get(key) ?? {
    in: 0,
    off: 0,
    added: 0,
    back: 0,
    renewed: 0,
    leftOut: 0,
  };
  state.tallies.set(key, tally);
  return tally;
}

/** The thing that a change acts on. */
export function thingOf(world: World, change: Change): Thing | undefined {
  return world.things.get(keyOf(change.object, change.place));
}
