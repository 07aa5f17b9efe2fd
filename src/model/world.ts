import type { Figure } from "./figure.js";
import type { Origin } from "./source.js";
import type { ObjectKind } from "./verbs.js";

/** An object's key: its name, with `@position` where there is more than one. */
export type Key = string;

/** One thing that a step does to one object. */
export interface Change {
  verb: string;
  object: string;
  /** The position, or an empty text where there is one only. */
  place: string;
  count?: number;
  /** How many of the count are new. */
  fresh?: number;
  round?: number;
  to?: string;
  reason?: string;
  /** How long a fire is watched. */
  minutes?: number;
}

/** An object on the car or of the recipe, as this car has it. */
export interface Thing {
  is: ObjectKind;
  key: Key;
  name: string;
  words: string;
  position: string;
  zone: string;
  origin: Origin;
  /** part, surface: the fixings and joins that hold or close it. */
  holders: Key[];
  /** part: all that it covers, as the range lists it. */
  hides: Key[];
  /** part: the joints that weld it in. */
  weldedBy: Key[];
  /** part: what must be out before it can be eased. */
  easedBy: Key[];
  /** fixing, join: what it holds. */
  host?: Key;
  fixing?: FixingFacts;
  /** join, function: the supply it carries or needs. */
  supply?: Key;
  /** function: the joins it proves. */
  proves: Key[];
  untested?: string;
  /** surface: states it must reach again before it is covered. */
  finish: string[];
  /** joint: factory welds, and whether the body leans on it. */
  welds?: number;
  structural?: boolean;
  /** part: what the refit does about a part that was missing when the car came in. */
  absent?: "fit-new" | "leave-off";
  critical?: string;
  people: number;
  /** hold: what it releases. */
  looksAt: Key[];
  role?: string;
  /** hold: somebody who did not do the work releases it. */
  independent?: boolean;
}

/** A kind of fastener that somebody fitted instead of the range's own. */
export interface Instead {
  name: string;
  plural: string;
  size: string;
  /** The verb by which it comes out. */
  verb: string;
  tool?: string;
}

/** What the range and the car say of one fixing at one place. */
export interface FixingFacts {
  kind: string;
  kindName: string;
  kindPlural: string;
  size: string;
  full: number;
  /** How many are in when the car comes in, how many of them are too many, and how many go back. */
  present: number;
  extra: number;
  sound: number;
  /** The kind found there, where it is not the range's. */
  instead?: Instead;
  note?: string;
  oneUse: boolean;
  where: string;
  tool?: string;
  /** The tools by which it goes in, where they are not `tool`; none of them where it goes in by hand. */
  toolsIn?: readonly string[];
  torque?: Figure;
}

/** Something that must be so before a change: another change done, or an object in a state. */
export type Need = { law: 1 | 6 | 15; origin: Origin } & (
  { done: string } | { key: Key; state: string }
);

/** An object and the state that it must have, as a range or a recipe writes it. */
export interface StateNeed {
  key: Key;
  state: string;
  origin: Origin;
}

/** Everything `prove` holds a plan against; built from the library and the car, never from a plan. */
export interface World {
  things: ReadonlyMap<Key, Thing>;
  /** By change: what must be so first. */
  needs: ReadonlyMap<string, readonly Need[]>;
  /** By change: the holds that must be released first. */
  gates: ReadonlyMap<string, readonly Key[]>;
  /** Work that must have been done by the end. */
  duties: readonly { change: Change; origin: Origin }[];
  /** What the range asks for before hot work, and the minutes of the watch after it. */
  hot?: { needs: readonly StateNeed[]; watch: number };
  /** What the range asks for while a structural joint is open, and what is compared after. */
  structural?: { needs: readonly StateNeed[]; compare: readonly Key[] };
  /** What the recipes record. */
  records: readonly { change: Change; origin: Origin }[];
}

/** The key of an object of a given name at a given place. */
export function keyOf(name: string, place: string): Key {
  return place === "" ? name : `${name}@${place}`;
}

/** The keys of what a step changes. */
export function keysOf({ does }: { does: readonly Change[] }): Key[] {
  return does.map(({ object, place }) => keyOf(object, place));
}

/** The name under which needs, gates and duties of a change are kept. */
export function changeKey(change: Change): string {
  const round = change.round === undefined ? "" : ` ${change.round}`;
  const to = change.to === undefined ? "" : ` to ${change.to}`;
  return `${change.verb} ${keyOf(change.object, change.place)}${to}${round}`;
}
