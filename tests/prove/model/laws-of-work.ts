import { verbs } from "../../../src/model/verbs.js";
import { type Thing, changeKey, keyOf } from "../../../src/model/world.js";
import { isOpen, isSo, whereIs } from "./states.js";
import { isLeftOff, unmet } from "./laws-of-parts.js";
import type { Event, Tale } from "./tale.js";

/** Law 7: nothing behind a hold starts before its release; critical work ends inspected by another. */
export function holds(tale: Tale): boolean {
  const early = ({ change, at }: Event): boolean =>
    (tale.world.gates.get(changeKey(change)) ?? []).some((key) => !isSo(tale, key, "released", at));
  const asked = tale.world.duties.filter(({ change }) => verbs[change.verb]?.effect === "release");
  const critical = [...tale.world.things.values()].filter(
    (thing) => thing.critical !== undefined || thing.structural === true,
  );
  return (
    tale.events.some(early) ||
    asked.some(
      ({ change }) => !isSo(tale, keyOf(change.object, change.place), "released", tale.end),
    ) ||
    critical.some((thing) => isUninspected(tale, thing))
  );
}

/** The last work on a critical part, on what holds it, or on the welds of a structural joint. */
function isUninspected(tale: Tale, { key, holders }: Thing): boolean {
  const work = [
    ...tale.past(key, tale.end, "off", "cut-off", "ease", "on", "fit-new", "settle"),
    ...holders.flatMap((one) => tale.past(one, tale.end, "out", "in", "part-join", "make-join")),
    ...["drill", "separate", "weld"].flatMap((verb) => tale.named(key, verb)),
  ];
  if (work.length === 0 || isLeftOff(tale, key, tale.end)) return false;
  const last = Math.max(...work.map(({ at }) => at));
  return !tale.releasedBetween(key, last, tale.end, ({ independent }) => independent === true);
}

/**
 * Law 8: what is destroyed is recorded first. Where no recipe records anything, nothing can be: "what is
 * destroyed is recorded first" (DEVELOPERS.md) is broken then too.
 */
export function record(tale: Tale): boolean {
  const first = tale.events.find(({ kinds }) => kinds.includes("destroys"));
  return (
    first !== undefined &&
    (tale.world.records.length === 0 ||
      !tale.world.records.every(({ change }) => tale.done(changeKey(change), first.at)))
  );
}

/**
 * Law 9: before sparks all that the range asks for is safe; then a watch. "What must be watched is not
 * disturbed before its time" (law 10): until the watch after any spark is over no part goes on and no supply
 * comes back. The new part that the sparks are about to weld in is not closing.
 */
export function hotWork(tale: Tale): boolean {
  const { hot } = tale.world;
  const sparks = tale.events.filter(({ kinds }) => kinds.includes("hot"));
  if (sparks.length > 0 && hot === undefined) return true;
  const unsafe = ({ at }: Event): boolean =>
    hot?.needs.some(
      ({ key, state }) =>
        !isSo(tale, key, state, at) ||
        (state === "tested" && isStale(tale, key, at)) ||
        (state === "seen" && isUnguarded(tale, key, at)),
    ) ?? false;
  const closes = ({ effect, thing }: Event): boolean =>
    effect === "on" ||
    effect === "settle" ||
    effect === "restore" ||
    (effect === "fit-new" && thing?.weldedBy.length === 0);
  return (
    isHot(tale, tale.end) ||
    sparks.some(unsafe) ||
    tale.events.some((one) => closes(one) && isHot(tale, one.at))
  );
}

/** A test of the air says nothing of what was sprayed or wiped on after it. */
function isStale(tale: Tale, key: string, at: number): boolean {
  const tested = tale.named(key, "test", at).at(-1)?.at ?? -1;
  return tale.events.some((one) => one.at > tested && one.at < at && solvents.includes(one.verb));
}

/** A look at what the sparks can reach says nothing once the watch that guarded it is over. */
function isUnguarded(tale: Tale, key: string, at: number): boolean {
  const looked = tale.named(key, "look-at", at).at(-1)?.at ?? -1;
  const full = tale.world.hot?.watch ?? 0;
  return tale.events.some(
    (one) =>
      one.at > looked && one.at < at && one.verb === "watch" && (one.change.minutes ?? 0) >= full,
  );
}

const solvents = ["prime", "paint", "seal", "coat", "wax", "wipe"];

/** Sparks have flown before this place, and no watch of the full time stands between. */
function isHot(tale: Tale, at: number): boolean {
  const full = tale.world.hot?.watch ?? 0;
  const spark = tale.events.findLast((one) => one.at < at && one.kinds.includes("hot"));
  return (
    spark !== undefined &&
    !tale.events.some(
      ({ at: then, verb, change }) =>
        then > spark.at && then < at && verb === "watch" && (change.minutes ?? 0) >= full,
    )
  );
}

/**
 * Law 10: what must cure has its wait; no night stop in a fire watch, or under an unsupported load, which a
 * part in on trial is, and a car whose open joint stands on nothing. A night stop is a pause point (part 2 of
 * the design), so no other step is one.
 */
export function waiting(tale: Tale): boolean {
  const unsafe = (at: number): boolean =>
    isHot(tale, at) ||
    tale.all("part").some(({ key }) => whereIs(tale, key, at) === "trial") ||
    (openedJoints(tale).some((key) => isOpen(tale, key, at)) && !stands(tale, at));
  const nights = tale.events.filter(({ step }) => step.night);
  return (
    tale.events.some(({ kinds, step }) => kinds.includes("wet") && step.wait === "") ||
    nights.some(({ verb, at }) => verb !== "pause" || unsafe(at))
  );
}

/** The structural joints that the plan opens. */
function openedJoints(tale: Tale): string[] {
  return tale
    .all("joint")
    .filter(({ key, structural }) => structural === true && opensOf(tale, key).length > 0)
    .map(({ key }) => key);
}

function opensOf(tale: Tale, key: string): Event[] {
  return [...tale.named(key, "drill"), ...tale.named(key, "separate")];
}

function stands(tale: Tale, at: number): boolean {
  const needs = tale.world.structural?.needs ?? [];
  return needs.every(({ key, state }) => isSo(tale, key, state, at));
}

/** Law 13: while a structural joint is open the car stands, braced and still; gaps are compared after. */
export function support(tale: Tale): boolean {
  const opened = openedJoints(tale);
  const { structural } = tale.world;
  if (opened.length === 0) return false;
  if (structural === undefined) return true;
  const open = (at: number): boolean => opened.some((key) => isOpen(tale, key, at));
  const places = [...tale.events.map(({ at }) => at), tale.end];
  const opens = opened.flatMap((key) => opensOf(tale, key));
  const first = Math.min(...opens.map(({ at }) => at));
  const shut = 1 + places.findLastIndex((at) => open(at));
  // "Recorded before and compared after": what is compared while a joint is open is compared too early.
  const compared = (key: string): boolean => {
    const all = tale.named(key, "compare");
    return all.some(({ at }) => at >= shut) && !all.some(({ at }) => open(at));
  };
  return (
    places.some((at) => open(at) && !stands(tale, at)) ||
    opens.some(({ at }) => !stands(tale, at)) ||
    tale.events.some(({ verb, at }) => ["raise", "lower", "unbrace"].includes(verb) && open(at)) ||
    structural.compare.some((key) => tale.named(key, "measure", first).length === 0) ||
    !structural.compare.every(compared)
  );
}

/** Law 15: each piece of work asked for is done, after what it needs. */
export function work(tale: Tale): boolean {
  return unmet(tale, 15) || !tale.world.duties.every(({ change }) => tale.done(changeKey(change)));
}
