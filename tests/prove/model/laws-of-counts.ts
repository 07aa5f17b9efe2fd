import { isBegun, isIsolated, isParted, countIn } from "./states.js";
import { unmet } from "./laws-of-parts.js";
import { type Event, type Tale, sum } from "./tale.js";

const fresh = ({ fresh: some = 0 }: Event["change"]): number => some;

/** Law 4: off and added equal back, renewed and left out; the place ends full. */
export function count(tale: Tale): boolean {
  return tale.all("fixing").some(({ key, fixing }) => {
    const out = tale.past(key, tale.end, "out");
    const back = tale.past(key, tale.end, "in");
    const left = tale.past(key, tale.end, "leave-out");
    if (fixing === undefined || out.length + back.length + left.length === 0) return false;
    const [off, put, named] = [sum(out), sum(back), sum(left)];
    const ends = countIn(tale, key, tale.end);
    const lost = off > put + named;
    const surplus = ends > fixing.full || put - sum(back, fresh) > off;
    const short = ends + named < fixing.full;
    const never = [...out, ...back].some(
      ({ at }) =>
        countIn(tale, key, at + 1) < 0 || countIn(tale, key, at + 1) > fixing.full + fixing.extra,
    );
    const unsaid = left.some(({ change }) => (change.reason ?? "") === "");
    return lost || surplus || short || never || unsaid;
  });
}

/** Law 5: a one-use fixing never goes back. */
export function oneUse(tale: Tale): boolean {
  return tale
    .with("in")
    .some(
      ({ thing, change }) =>
        thing?.fixing?.oneUse === true && (change.fresh ?? 0) < (change.count ?? 0),
    );
}

/** Law 6: plugs are joined and tried, supplies restored, in the right state. */
export function joins(tale: Tale): boolean {
  const live = ({ thing, at }: Event): boolean =>
    thing?.supply !== undefined && !isIsolated(tale, thing.supply, at);
  const dead = ({ thing, at }: Event): boolean =>
    thing?.supply !== undefined && isIsolated(tale, thing.supply, at);
  const proves =
    (key: string) =>
    (one: Event): boolean =>
      (one.thing?.proves ?? []).includes(key) && !dead(one);
  const untried = tale.all("join").some(({ key, untested }) => {
    const parted = tale.last(key, tale.end, "part-join");
    if (parted === undefined) return false;
    const joined = tale.last(key, tale.end, "make-join")?.at ?? Infinity;
    const tried = tale.with("prove").some((one) => one.at > joined && proves(key)(one));
    return isParted(tale, key, tale.end) || (untested === undefined && !tried);
  });
  return (
    unmet(tale, 6) ||
    tale.with("part-join", "make-join").some(live) ||
    tale.with("prove").some(dead) ||
    tale.all("supply").some(({ key }) => isIsolated(tale, key, tale.end)) ||
    untried
  );
}

/** Law 12: welds drilled out are put back, after a test piece was peeled. */
export function welds(tale: Tale): boolean {
  const unequal = tale
    .all("joint")
    .some(({ key }) => sum(tale.named(key, "drill")) !== sum(tale.named(key, "weld")));
  const peeled = ({ at }: Event): boolean =>
    tale.events.some(
      (one) => one.verb === "peel" && one.at < at && tale.releasedBetween(one.key, one.at, at),
    );
  const onCar = tale.events.filter(({ verb, thing }) => verb === "weld" && thing?.is === "joint");
  // "Holes through the layer that stays are closed" (law 12): after the last drilling before the weld.
  const holed = ({ key, at }: Event): boolean => {
    const drilled = tale.named(key, "drill", at).at(-1);
    return (
      drilled !== undefined && !tale.named(key, "close", at).some((one) => one.at > drilled.at)
    );
  };
  return unequal || !onCar.every(peeled) || onCar.some(holed);
}

/** Law 14: what the start opened the end closes. */
export function closing(tale: Tale): boolean {
  return tale.with("begin", "end").some(({ key }) => isBegun(tale, key, tale.end));
}
