import { changeKey } from "../../../src/model/world.js";
import { isOpen, isSo } from "./states.js";
import { unmet } from "./laws-of-parts.js";
import type { Event, Tale } from "./tale.js";

/** Law 7: nothing behind a hold starts before its release; critical work ends inspected by another. */
export function holds(tale: Tale): boolean {
  const early = ({ change, at }: Event): boolean =>
    (tale.world.gates.get(changeKey(change)) ?? []).some((key) => !isSo(tale, key, "released", at));
  const critical = [...tale.world.things.values()].filter(
    (thing) => thing.critical !== undefined || thing.structural === true,
  );
  return tale.events.some(early) || critical.some(({ key }) => isUninspected(tale, key));
}

function isUninspected(tale: Tale, key: string): boolean {
  const { holders = [] } = tale.world.things.get(key) ?? {};
  const fitted = ["on", "fit-new", "settle"] as const;
  const work = [
    ...tale.past(key, tale.end, "off", "cut-off", "ease", ...fitted),
    ...holders.flatMap((holder) =>
      tale.past(holder, tale.end, "out", "in", "part-join", "make-join"),
    ),
    ...tale.worked(key, tale.end),
  ];
  if (work.length === 0) return false;
  const last = Math.max(...work.map(({ at }) => at));
  return !tale.releasedBetween(key, last, tale.end, ({ independent }) => independent === true);
}

/**
 * Law 8: what is destroyed is recorded first. Where no recipe records anything, nothing can be: "what is
 * destroyed is recorded first" (DEVELOPERS.md) is broken then too.
 */
export function record(tale: Tale): boolean {
  const first = tale.events.find(({ kind }) => kind === "destroys");
  return (
    first !== undefined &&
    (tale.world.records.length === 0 ||
      !tale.world.records.every(({ change }) => tale.done(changeKey(change), first.at)))
  );
}

/** Law 9: before sparks all that the range asks for is safe; then a watch. */
export function hotWork(tale: Tale): boolean {
  const { hot } = tale.world;
  const sparks = tale.events.filter(({ kind }) => kind === "hot");
  const last = sparks.at(-1);
  if (hot === undefined || last === undefined) return false;
  const safe = (at: number): boolean =>
    hot.needs.every(({ key, state }) => isSo(tale, key, state, at));
  const watched = endOfWatch(tale, last.at, hot.watch);
  const between = tale.events.filter(({ at }) => at > last.at && at < watched);
  return (
    watched === Infinity ||
    sparks.some(({ at }) => !safe(at)) ||
    between.some(({ at, effect }) => !safe(at + 1) || effect === "on" || effect === "restore")
  );
}

/** Where the watch of the full time after a spark stands; nowhere is behind the end. */
function endOfWatch(tale: Tale, spark: number, full: number): number {
  const watch = tale.events.find(
    ({ at, verb, change }) => at > spark && verb === "watch" && (change.minutes ?? 0) >= full,
  );
  return watch?.at ?? Infinity;
}

/** Law 10: what must cure has its wait; no night stop in an unsafe place. */
export function waiting(tale: Tale): boolean {
  const sparks = tale.events.filter(({ kind }) => kind === "hot");
  const inWatch = (at: number): boolean => {
    const spark = sparks.findLast((one) => one.at < at);
    return spark !== undefined && endOfWatch(tale, spark.at, tale.world.hot?.watch ?? 0) >= at;
  };
  return (
    tale.events.some(({ kind, step }) => kind === "wet" && step.wait === "") ||
    tale.events.some(({ step, at }) => step.night && step.does.length > 0 && inWatch(at + 1))
  );
}

/** Law 13: while a structural joint is open the car stands, braced and still. */
export function support(tale: Tale): boolean {
  const { structural } = tale.world;
  const opened = tale
    .all("joint")
    .filter((joint) => joint.structural === true)
    .map(({ key }) => key)
    .filter((key) => tale.events.some((one) => one.key === key && one.kind === "destroys"));
  const first = tale.events.find((one) => one.kind === "destroys" && opened.includes(one.key));
  if (structural === undefined || first === undefined) return false;
  const open = (at: number): boolean => opened.some((key) => isOpen(tale, key, at));
  const stands = (at: number): boolean =>
    structural.needs.every(({ key, state }) => isSo(tale, key, state, at));
  const places = [...tale.events.map(({ at }) => at), tale.end];
  const shut = 1 + places.findLastIndex((at) => open(at));
  const compared = ({ key, verb, at }: Event): boolean =>
    structural.compare.includes(key) && verb === "compare" && at >= shut;
  return (
    places.some((at) => open(at) && !stands(at)) ||
    tale.events.some(
      (one) => one.kind === "destroys" && opened.includes(one.key) && !stands(one.at),
    ) ||
    structural.compare.some((key) => tale.named(key, "measure", first.at).length === 0) ||
    !structural.compare.every((key) => tale.events.some((one) => one.key === key && compared(one)))
  );
}

/** Law 15: each piece of work asked for is done, after what it needs. */
export function work(tale: Tale): boolean {
  return unmet(tale, 15) || !tale.world.duties.every(({ change }) => tale.done(changeKey(change)));
}
