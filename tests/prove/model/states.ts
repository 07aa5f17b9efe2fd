import { type Effect, verbs } from "../../../src/model/verbs.js";
import type { Key } from "../../../src/model/world.js";
import { type Tale, sum } from "./tale.js";

const moves = {
  off: "off",
  "cut-off": "off",
  on: "on",
  "fit-new": "on",
  "try-in": "trial",
  "take-out": "off",
  ease: "eased",
  settle: "on",
} as const;

/**
 * Where a part is at a place of the tale. To leave a part off is a decision about a part that is off already:
 * the word alone takes nothing out of the car.
 */
export function whereIs(tale: Tale, key: Key, at: number): "on" | "off" | "trial" | "eased" {
  const last = tale.last(key, at, ...movers)?.effect;
  const part = tale.world.things.get(key);
  if (last === undefined) return part?.absent === undefined ? "on" : "off";
  return moves[last as keyof typeof moves];
}

const movers = Object.keys(moves) as (keyof typeof moves)[];

/** How many fixings are in at a place of the tale: what was there, less what came out, and what went in. */
export function countIn(tale: Tale, key: Key, at: number): number {
  const present = tale.world.things.get(key)?.fixing?.present ?? 0;
  return present - sum(tale.past(key, at, "out")) + sum(tale.past(key, at, "in"));
}

/** A holder lets go: a fixing is out to the last one, a join is parted. */
export function letsGo(tale: Tale, key: Key, at: number): boolean {
  const thing = tale.world.things.get(key);
  return thing?.is === "fixing" ? countIn(tale, key, at) <= 0 : isParted(tale, key, at);
}

/** A fixing is out to the last one; a part is off, or in on trial. */
function isOut(tale: Tale, key: Key, at: number): boolean {
  return tale.world.things.get(key)?.is === "fixing"
    ? countIn(tale, key, at) <= 0
    : ["off", "trial"].includes(whereIs(tale, key, at));
}

export function isParted(tale: Tale, key: Key, at: number): boolean {
  return tale.last(key, at, "part-join", "make-join")?.effect === "part-join";
}

export function isIsolated(tale: Tale, key: Key, at: number): boolean {
  return tale.last(key, at, "isolate", "restore")?.effect === "isolate";
}

export function isBegun(tale: Tale, key: Key, at: number): boolean {
  return tale.last(key, at, "begin", "end")?.effect === "begin";
}

/** A joint is open from the drilling of its welds, or its parting, until as many welds are in again. */
export function isOpen(tale: Tale, key: Key, at: number): boolean {
  const welded = tale.named(key, "weld", at);
  const drilled = tale.named(key, "drill", at);
  const opened = [...drilled, ...tale.named(key, "separate", at)].map((one) => one.at);
  return sum(drilled) > sum(welded) || Math.max(-1, ...opened) > (welded.at(-1)?.at ?? -1);
}

/** A joint lets go of what it welds in: it was separated, and not welded since. */
export function isSeparated(tale: Tale, key: Key, at: number): boolean {
  const welded = tale.named(key, "weld", at).at(-1)?.at ?? -1;
  return tale.named(key, "separate", at).some((one) => one.at > welded);
}

/** A pair of effects on one object is out of turn: done twice, or taken back before it was done. */
export function outOfTurn(tale: Tale, off: Effect, back: Effect): boolean {
  return tale.with(off, back).some(({ key, at, effect }) => {
    const before = tale.last(key, at, off, back)?.effect;
    return effect === off ? before === off : before !== off;
  });
}

/**
 * Whether an object is in the state that a word of `needs` names. A part in on trial counts as off: "for those
 * parts alone cover is suspended" (law 11), and welding under it is refused by law 11 itself.
 */
export function isSo(tale: Tale, key: Key, word: string, at: number): boolean {
  switch (word) {
    case "off":
      return isOut(tale, key, at);
    case "on":
      return whereIs(tale, key, at) === "on";
    case "eased":
      return ["eased", "off", "trial"].includes(whereIs(tale, key, at));
    case "live":
      return !isIsolated(tale, key, at);
    case "isolated":
      return isIsolated(tale, key, at);
    case "parted":
      return isParted(tale, key, at);
    case "joined":
      return !isParted(tale, key, at);
    case "released":
      return tale.past(key, at, "release").length > 0;
    case "set":
    case "opened":
    case "raised":
    case "braced":
    case "shielded":
      return isBegun(tale, key, at);
    default:
      return isSetOrWorked(tale, key, word, at);
  }
}

/** A setting holds from the move until the part is handled; work holds until the surface is bared again. */
function isSetOrWorked(tale: Tale, key: Key, word: string, at: number): boolean {
  const since = tale.named(key, "bare", at).at(-1)?.at ?? -1;
  const move = tale.last(key, at, "move");
  const handled = tale.last(key, at, ...movers)?.at ?? -1;
  return (
    (move !== undefined && move.at > handled && move.change.to === word) ||
    tale.past(key, at, "work").some((one) => one.at >= since && verbs[one.verb]?.gives === word)
  );
}
