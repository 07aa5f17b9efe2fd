import { type Thing, changeKey } from "../../../src/model/world.js";
import { countIn, isBegun, isIsolated, isParted, outOfTurn, whereIs } from "./states.js";
import { unmet } from "./laws-of-parts.js";
import { type Event, type Tale, sum } from "./tale.js";

const fresh = ({ fresh: some = 0 }: Event["change"]): number => some;

/**
 * Law 4: off and added equal back, renewed and left out; the place ends full. A place is opened with its part
 * ("whatever was found there"). The range's own number is the other source also for the welds of a joint, and
 * welds that nobody counts cannot balance.
 */
export function count(tale: Tale): boolean {
  const otherWelds = tale.events.some(
    ({ thing, change, verb }) =>
      thing?.welds !== undefined &&
      (change.count ?? (/^(drill|weld)$/.test(verb) ? 0 : thing.welds)) !== thing.welds,
  );
  return otherWelds || tale.all("fixing").some((thing) => isMiscounted(tale, thing));
}

function isMiscounted(tale: Tale, { key, fixing, host = "" }: Thing): boolean {
  const [out, back, left] = (["out", "in", "leave-out"] as const).map((effect) =>
    tale.past(key, tale.end, effect),
  ) as [Event[], Event[], Event[]];
  const touched = [...out, ...back, ...left];
  if (fixing === undefined || (touched.length === 0 && !isOpened(tale, key, host))) return false;
  const [off, put, named] = [sum(out), sum(back), sum(left)];
  // The car is a state (part 3 of the design): what is still in cannot have been left out.
  const leftBy = (at: number): number => sum(tale.past(key, at + 1, "leave-out"));
  const old = (at: number): number => {
    const before = tale.past(key, at, "in");
    return sum(before) - sum(before, fresh);
  };
  return (
    touched.some(({ change }) => (change.count ?? 0) < 1) ||
    back.some(({ change: { count: n = 0, fresh: m = 0 } }) => m < 0 || m > n) ||
    out.some(({ at }) => countIn(tale, key, at + 1) < 0) ||
    back.some(({ at }) => countIn(tale, key, at + 1) > fixing.full) ||
    back.some(({ at }) => old(at + 1) > sum(tale.past(key, at, "out"))) ||
    left.some(({ change }) => (change.reason ?? "") === "") ||
    left.some(({ at }) => countIn(tale, key, at) + leftBy(at) > fixing.full + fixing.extra) ||
    off > put + named ||
    countIn(tale, key, tale.end) + named !== fixing.full + fixing.extra
  );
}

/** A place is opened and closed again with the part that it holds, off and on or aside and back. */
function isOpened(tale: Tale, key: string, host: string): boolean {
  const aside = tale.world.things.get(host)?.easedBy.includes(key) === true;
  const moves = tale.past(host, tale.end, "off", "on", "fit-new");
  const eases = aside ? tale.past(host, tale.end, "ease", "settle") : [];
  return moves.length + eases.length > 0 && whereIs(tale, host, tale.end) === "on";
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
    outOfTurn(tale, "part-join", "make-join") ||
    outOfTurn(tale, "isolate", "restore") ||
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
    tale.all("thing").some(({ key }) => {
      // "Peeled and released before the car is welded": what is done to a piece after that is another piece.
      const done = tale.worked(key, at).at(-1);
      const peel = tale.named(key, "peel", at).at(-1);
      return done !== undefined && peel !== undefined && tale.releasedBetween(key, done.at, at);
    });
  const onCar = tale.events.filter(({ verb, thing }) => verb === "weld" && thing?.is === "joint");
  // "Holes through the layer that stays are closed" (law 12): after the last drilling before the weld.
  const holed = ({ key, at }: Event): boolean => {
    const drilled = tale.named(key, "drill", at).findLast(({ change }) => (change.count ?? 0) > 0);
    return (
      drilled !== undefined && !tale.named(key, "close", at).some((one) => one.at > drilled.at)
    );
  };
  return unequal || !onCar.every(peeled) || onCar.some(holed);
}

/** Law 14: what the start opened the end closes; a last line is signed, and nothing is done after it. */
export function closing(tale: Tale): boolean {
  const asked = tale.world.duties.map(({ change }) => changeKey(change));
  const lines = asked.filter((one) => /^(sweep|sign) /.test(one));
  const signed = tale.events.findLast(
    ({ verb, change }) => verb === "sign" && asked.includes(changeKey(change)),
  );
  return (
    outOfTurn(tale, "begin", "end") ||
    tale.with("begin").some(({ key }) => isBegun(tale, key, tale.end)) ||
    lines.some((one) => !tale.done(one)) ||
    (signed !== undefined && signed.at < tale.end - 1)
  );
}
