import type { Key, Thing, World } from "../../model/world.js";
import type { Breach, Law, Moment } from "../law.js";
import { breachIf } from "../law.js";
import { unmet } from "../needs.js";
import { type State, isOff } from "../state.js";

/** Law 1: a part comes off, and a surface is worked on, only when all that holds or covers it, on this car, is off. */
export const access: Law = {
  law: 1,
  code: "access",
  name: "Access",
  before: (moment) => [...unmet(moment, 1), ...held(moment), ...covered(moment), ...hostOn(moment)],
};

function held({ world, state, thing, effect }: Moment): Breach[] {
  const leaving = effect === "off" || effect === "cut-off";
  const holding = leaving ? thing.holders : effect === "ease" ? thing.easedBy : [];
  const gripping = holding.filter((key) => holds(world, state, key));
  const welds = leaving ? thing.weldedBy.filter((key) => !state.welds.get(key)?.parted) : [];
  return [...gripping, ...welds].map((key) => ({
    message: `the ${thing.words} is still held by '${key}'`,
    related: originOf(world, key, "holds it"),
  }));
}

function holds(world: World, state: State, key: Key): boolean {
  if (world.things.get(key)?.is === "fixing") return (state.tallies.get(key)?.in ?? 0) > 0;
  return !state.parted.has(key);
}

const reaching = [
  "out",
  "in",
  "part-join",
  "make-join",
  "off",
  "on",
  "ease",
  "settle",
  "cut-off",
  "fit-new",
];

function covered({ world, state, thing, effect }: Moment): Breach[] {
  if (!reaching.includes(effect) && thing.is !== "surface") return [];
  const target = thing.host ?? thing.key;
  const covers = [...new Set([...coversOf(world, thing.key), ...coversOf(world, target)])];
  return covers
    .filter((one) => !isOff(state, one.key) && state.parts.get(one.key) !== "eased")
    .map((one) => ({
      message: `'${thing.key}' is covered by the ${one.words}`,
      related: [{ origin: one.origin, label: "covers it" }],
    }));
}

const known = new WeakMap<World, Map<Key, Thing[]>>();

/** What covers a thing: the range's list of what each part hides, turned about once for a world. */
function coversOf(world: World, key: Key): readonly Thing[] {
  const covers = known.get(world) ?? new Map<Key, Thing[]>();
  if (!known.has(world)) {
    known.set(world, covers);
    for (const one of world.things.values())
      for (const under of one.hides) covers.set(under, [...(covers.get(under) ?? []), one]);
  }
  return covers.get(key) ?? [];
}

function hostOn({ world, state, thing, effect }: Moment): Breach[] {
  const host = thing.host === undefined ? undefined : world.things.get(thing.host);
  const needs = ["in", "make-join"].includes(effect) && host?.is === "part";
  const now = state.parts.get(thing.host ?? "") ?? "";
  const aside = now === "eased" && host?.easedBy.includes(thing.key) === true;
  const missing = needs && (aside || ["off", "absent", "gone", "left-off"].includes(now));
  return breachIf(missing, `the ${host?.words} that '${thing.key}' holds is not in its place`);
}

function originOf(world: World, key: Key, label: string): NonNullable<Breach["related"]> {
  const thing = world.things.get(key);
  return thing ? [{ origin: thing.origin, label }] : [];
}
