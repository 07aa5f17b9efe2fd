import { type Key, type Thing, changeKey } from "../../../src/model/world.js";
import { countIn, isOpen, isParted, isSo, letsGo, whereIs } from "./states.js";
import type { Event, Tale } from "./tale.js";

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

/** Law 1: a part comes off only when all that holds or covers it is off. */
export function access(tale: Tale): boolean {
  const held = ({ thing, at }: Event): boolean =>
    thing !== undefined &&
    (thing.holders.some((key) => !letsGo(tale, key, at)) ||
      thing.weldedBy.some((key) => tale.named(key, "separate", at).length === 0));
  const covered = ({ key, at }: Event): boolean =>
    tale
      .all("part")
      .filter((over) => over.hides.includes(key))
      .some((over) => ["on", "trial"].includes(whereIs(tale, over.key, at)));
  const tied = ({ thing, at }: Event): boolean =>
    (thing?.easedBy ?? []).some(
      (key) =>
        !(tale.world.things.get(key)?.is === "part"
          ? isSo(tale, key, "off", at)
          : letsGo(tale, key, at)),
    );
  const leaving = tale.with("off", "cut-off");
  return (
    unmet(tale, 1) || leaving.some(held) || leaving.some(covered) || tale.with("ease").some(tied)
  );
}

/** Law 2: a part goes on only when what it hides is back, finished and released. */
export function cover(tale: Tale): boolean {
  return tale
    .with("on", "fit-new", "settle")
    .some(({ thing, at }) => thing?.hides.some((key) => !mayBeHidden(tale, key, at)) ?? false);
}

function mayBeHidden(tale: Tale, key: Key, at: number): boolean {
  const thing = tale.world.things.get(key);
  if (thing?.is === "part") return whereIs(tale, key, at) === "on" || isLeftOff(tale, key, at);
  if (thing?.is === "join") return !isParted(tale, key, at);
  if (thing?.is === "surface") return isFinished(tale, thing, at);
  const work = tale.worked(key, at).at(-1);
  return work === undefined || (!isOpen(tale, key, at) && tale.releasedBetween(key, work.at, at));
}

function isFinished(tale: Tale, { key, finish, holders }: Thing, at: number): boolean {
  const closed = holders.every(
    (holder) =>
      tale.past(holder, at, "out").length === 0 ||
      countIn(tale, holder, at) >= (tale.world.things.get(holder)?.fixing?.full ?? 0),
  );
  const work = tale.worked(key, at).at(-1);
  if (work === undefined) return closed;
  return (
    closed &&
    finish.every((word) => isSo(tale, key, word, at)) &&
    tale.releasedBetween(key, work.at, at)
  );
}

function isLeftOff(tale: Tale, key: Key, at: number): boolean {
  const last = tale.last(key, at, "off", "cut-off", "on", "fit-new", "leave-off");
  return last?.effect === "leave-off" && (last.change.reason ?? "") !== "";
}

/** Law 3: what came off is on at the end, or left off for a reason. */
export function returned(tale: Tale): boolean {
  return tale
    .all("part")
    .filter(({ key }) => tale.past(key, tale.end, "off", "cut-off").length > 0)
    .some(({ key }) => whereIs(tale, key, tale.end) !== "on" && !isLeftOff(tale, key, tale.end));
}

/** Law 11: a trial fit balances, and nothing is welded or closed in it. */
export function trialFit(tale: Tale): boolean {
  const tried = tale.with("try-in");
  const ends = ({ key, at }: Event): number =>
    tale.with("take-out").find((one) => one.key === key && one.at > at)?.at ?? Infinity;
  const closes = ({ kind, effect }: Event): boolean =>
    kind === "hot" || kind === "wet" || effect === "on" || effect === "fit-new";
  return tried.some(
    (one) =>
      ends(one) === Infinity ||
      tale.events.some((other) => other.at > one.at && other.at < ends(one) && closes(other)),
  );
}
