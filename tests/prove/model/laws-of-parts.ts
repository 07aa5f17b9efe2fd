import type { Effect } from "../../../src/model/verbs.js";
import { type Key, changeKey } from "../../../src/model/world.js";
import { countIn, isOpen, isParted, isSeparated, isSo, letsGo, whereIs } from "./states.js";
import { type Event, type Tale, sum } from "./tale.js";

/** Needs of one law that a change does not find met. */
export function unmet(tale: Tale, law: 1 | 6 | 15): boolean {
  return tale.events.some(({ change, at }) =>
    (tale.world.needs.get(changeKey(change)) ?? [])
      .filter((need) => need.law === law)
      .some((need) =>
        "done" in need ? !tale.done(need.done, at) : !isSo(tale, need.key, need.state, at),
      ),
  );
}

/**
 * Law 1: a part comes off only when all that holds or covers it is off. The plan is simulated (part 3 of the
 * design), so what lies under a cover is out of reach both ways, for work on a surface too, and nothing holds a
 * part that is not there.
 */
export function access(tale: Tale): boolean {
  const held = ({ thing, at }: Event): boolean =>
    thing !== undefined &&
    (thing.holders.some((key) => !letsGo(tale, key, at)) ||
      thing.weldedBy.some((key) => !isSeparated(tale, key, at)));
  const tied = ({ thing, at }: Event): boolean =>
    thing?.easedBy.some((key) => !letsGo(tale, key, at)) ?? false;
  return (
    unmet(tale, 1) ||
    tale.with("off", "cut-off").some(held) ||
    tale.with("ease").some(tied) ||
    tale.events.some((one) => isCovered(tale, one)) ||
    tale.with("in", "make-join").some((one) => holdsNothing(tale, one))
  );
}

const reaching: readonly Effect[] = [
  ...(["off", "cut-off", "on", "fit-new", "ease", "settle"] as const),
  ...(["out", "in", "part-join", "make-join"] as const),
];

function isCovered(tale: Tale, { key, thing, at, effect }: Event): boolean {
  const worksOnIt = thing?.is === "surface";
  if (effect === undefined || !(worksOnIt || reaching.includes(effect))) return false;
  return tale
    .all("part")
    .filter(({ hides }) => hides.includes(key) || hides.includes(thing?.host ?? ""))
    .some((over) => whereIs(tale, over.key, at) === "on");
}

function holdsNothing(tale: Tale, { key, thing, at }: Event): boolean {
  const host = tale.world.things.get(thing?.host ?? "");
  if (host?.is !== "part") return false;
  const where = whereIs(tale, host.key, at);
  return where === "off" || (where === "eased" && host.easedBy.includes(key));
}

/** Law 2: a part goes on only when what it hides is back, finished and released. */
export function cover(tale: Tale): boolean {
  return tale
    .with("on", "fit-new", "settle")
    .some(({ thing, at }) => thing?.hides.some((key) => !mayBeHidden(tale, key, at)) ?? false);
}

function mayBeHidden(tale: Tale, key: Key, at: number): boolean {
  const thing = tale.world.things.get(key);
  if (thing === undefined || [key, ...thing.holders].some((one) => isLoose(tale, one, at)))
    return false;
  if (thing.is === "part") return whereIs(tale, key, at) === "on" || isLeftOff(tale, key, at);
  if (thing.is !== "surface" && thing.is !== "joint") return true;
  const work = tale.worked(key, at).at(-1);
  return (
    work === undefined ||
    (!isOpen(tale, key, at) &&
      thing.finish.every((word) => isSo(tale, key, word, at)) &&
      tale.releasedBetween(key, work.at, at))
  );
}

/** A fixing or a join that was undone and is not all back. */
function isLoose(tale: Tale, key: Key, at: number): boolean {
  const fixing = tale.world.things.get(key)?.fixing;
  if (fixing === undefined) return isParted(tale, key, at);
  const touched = (["out", "in", "leave-out"] as const).some(
    (effect) => sum(tale.past(key, at, effect)) > 0,
  );
  const named = sum(tale.past(key, at, "leave-out"));
  return touched && countIn(tale, key, at) + named < fixing.full;
}

/** A part is left off on purpose: it is off, and since it went the plan says so and why. */
export function isLeftOff(tale: Tale, key: Key, at: number): boolean {
  const last = tale.last(key, at, "off", "cut-off", "take-out", "on", "fit-new", "leave-off");
  const reason = last?.change.reason ?? "";
  return whereIs(tale, key, at) === "off" && last?.effect === "leave-off" && reason !== "";
}

/**
 * Law 3: what came off, or was eased, is back at the end, or left off for a reason. A part that is not there
 * cannot come off and one that is there cannot go on: such a plan is of another car.
 */
export function returned(tale: Tale): boolean {
  const from = ({ key, at }: Event): string => whereIs(tale, key, at);
  return (
    tale.with("off", "cut-off").some((one) => !["on", "eased"].includes(from(one))) ||
    tale.with("on", "fit-new").some((one) => from(one) === "on") ||
    tale.with("ease").some((one) => from(one) !== "on") ||
    tale.with("settle").some((one) => from(one) !== "eased") ||
    tale.with("leave-off").some((one) => from(one) !== "off" || (one.change.reason ?? "") === "") ||
    tale
      .with("off", "cut-off", "ease", "take-out")
      .some(({ key }) => !isBack(tale, key) && !isLeftOff(tale, key, tale.end))
  );
}

/** A part left in on trial is law 11's. */
function isBack(tale: Tale, key: Key): boolean {
  return ["on", "trial"].includes(whereIs(tale, key, tale.end));
}

const joining = ["weld", "tack", "close", "seal", "paint"];

/**
 * Law 11: a trial fit balances, and nothing is welded or closed in it. To close is to seal or paint for good,
 * to weld holes shut, or to put a part on; primer closes nothing.
 */
export function trialFit(tale: Tale): boolean {
  const isTried = (key: Key, at: number): boolean => whereIs(tale, key, at) === "trial";
  const parts = tale.all("part");
  const closes = ({ verb, effect }: Event): boolean =>
    joining.includes(verb) || effect === "on" || effect === "fit-new" || effect === "settle";
  return (
    tale.with("try-in").some(({ key, at }) => whereIs(tale, key, at) !== "off") ||
    tale.with("take-out").some(({ key, at }) => !isTried(key, at)) ||
    parts.some(({ key }) => isTried(key, tale.end)) ||
    tale.events.some((one) => closes(one) && parts.some(({ key }) => isTried(key, one.at)))
  );
}
