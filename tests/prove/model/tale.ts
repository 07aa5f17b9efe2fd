import type { Step } from "../../../src/model/plan.js";
import { type Effect, type Verb, verbs } from "../../../src/model/verbs.js";
import {
  type Change,
  type Key,
  type Thing,
  type World,
  changeKey,
  keyOf,
} from "../../../src/model/world.js";

/** One change of a plan, with its place in the whole row of changes. */
export interface Event {
  at: number;
  change: Change;
  key: Key;
  thing: Thing | undefined;
  verb: string;
  effect: Effect | undefined;
  kinds: NonNullable<Verb["kinds"]>;
  step: Step;
}

/** Work that looks at a thing and leaves it as it was. */
const looks = [
  "compare",
  "find",
  "inspect",
  "look-at",
  "mark",
  "measure",
  "photograph",
  "tally",
  "test",
  "watch",
];

/**
 * A whole plan seen at once: the row of its changes, told to the end. Nothing is played through; a law is
 * asked of the row by index: which change was the last of its sort before this place, is there one after it.
 */
export class Tale {
  readonly events: readonly Event[];
  readonly world: World;
  readonly steps: readonly Step[];

  constructor(world: World, steps: readonly Step[]) {
    this.world = world;
    this.steps = steps;
    this.events = steps
      .flatMap((step) => step.does.map((change) => ({ step, change })))
      .map(({ step, change }, at) => {
        const key = keyOf(change.object, change.place);
        const row = verbs[change.verb];
        const facts = { effect: row?.effect, kinds: row?.kinds ?? [], verb: change.verb };
        return { at, change, key, thing: world.things.get(key), step, ...facts };
      });
  }

  /** The index behind the last change. */
  get end(): number {
    return this.events.length;
  }

  with(...effects: Effect[]): Event[] {
    return this.events.filter(({ effect }) => effect !== undefined && effects.includes(effect));
  }

  /** The changes of one object with these effects, before a place. */
  past(key: Key, at: number, ...effects: Effect[]): Event[] {
    return this.with(...effects).filter((one) => one.key === key && one.at < at);
  }

  last(key: Key, at: number, ...effects: Effect[]): Event | undefined {
    return this.past(key, at, ...effects).at(-1);
  }

  /** Work on an object that changes it, before a place. */
  worked(key: Key, at: number): Event[] {
    return this.past(key, at, "work").filter(({ verb }) => !looks.includes(verb));
  }

  named(key: Key, verb: string, at = this.end): Event[] {
    return this.past(key, at, "work").filter((one) => one.verb === verb);
  }

  done(key: string, at = this.end): boolean {
    return this.events.some((one) => one.at < at && changeKey(one.change) === key);
  }

  /** Somebody released a hold that looks at this object, between two places. */
  releasedBetween(
    key: Key,
    from: number,
    to: number,
    only = (one: Thing): boolean => one.is === "hold",
  ): boolean {
    return this.with("release").some(
      ({ at, thing }) =>
        at > from && at < to && thing !== undefined && thing.looksAt.includes(key) && only(thing),
    );
  }

  all(is: Thing["is"]): Thing[] {
    return [...this.world.things.values()].filter((thing) => thing.is === is);
  }
}

/** The sum of the counts of some changes. */
export function sum(events: readonly Event[], pick = ({ count = 0 }: Change): number => count) {
  return events.reduce((total, { change }) => total + pick(change), 0);
}
