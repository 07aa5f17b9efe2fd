import fc from "fast-check";
import type { Step } from "../../../src/model/plan.js";
import { verbs } from "../../../src/model/verbs.js";
import type { Change, Thing, World } from "../../../src/model/world.js";
import type { MadeJob } from "./made-job.js";

/** How a plan is spoiled: which way, and the dice that say where. */
export interface Twist {
  way: keyof typeof ways;
  a: number;
  b: number;
  c: number;
}

type Way = (job: MadeJob, dice: Twist) => Step[];

const ways = {
  drop: ({ steps }: MadeJob, { a }: Twist) => steps.filter((_, i) => i !== a % steps.length),
  twice: ({ steps }: MadeJob, { a, b }: Twist) => put(steps, b, at(steps, a)),
  move: ({ steps }: MadeJob, { a, b }: Twist) => {
    const one = at(steps, a);
    return put(
      steps.filter((step) => step !== one),
      b,
      one,
    );
  },
  swap: ({ steps }: MadeJob, { a, b }: Twist) => {
    const [i, j] = [a % steps.length, b % steps.length];
    return steps.map((step, k) => (k === i ? at(steps, j) : k === j ? at(steps, i) : step));
  },
  neighbours: ({ steps }: MadeJob, { a }: Twist) => {
    const i = a % steps.length;
    return put(steps.toSpliced(i, 1), i + 1, at(steps, i));
  },
  recount: (job: MadeJob, dice: Twist) =>
    change(job, dice, "count", ({ count = 0, ...rest }) => ({
      ...rest,
      count: count + (dice.b % 2 === 0 ? 1 : -1),
    })),
  recountBoth: ({ steps }: MadeJob, { a, b }: Twist) => {
    const counted = steps.flatMap(({ does }) => does.filter((one) => one.count !== undefined));
    const object = counted[a % Math.max(1, counted.length)]?.object;
    const more = b % 2 === 0 ? 1 : -1;
    return edit(steps, (one) =>
      one.object === object && one.count !== undefined ? { ...one, count: one.count + more } : one,
    );
  },
  uncount: ({ steps }: MadeJob, { a }: Twist) =>
    edit(steps, ({ count, ...rest }) =>
      /^(drill|weld)$/.test(rest.verb) && a % 4 === 0
        ? rest
        : { ...rest, ...(count === undefined ? {} : { count }) },
    ),
  freshen: (job: MadeJob, dice: Twist) =>
    change(job, dice, "fresh", (one) => ({ ...one, fresh: dice.b % 3 })),
  watchLess: ({ steps }: MadeJob, { b }: Twist) =>
    edit(steps, (one) =>
      one.verb === "watch" ? { ...one, minutes: [0, 30, 59, 60][b % 4] ?? 0 } : one,
    ),
  noWait: ({ steps }: MadeJob, { a }: Twist) => {
    const wet = steps.filter(({ wait }) => wait !== "");
    return steps.map((step) =>
      step === wet[a % Math.max(1, wet.length)] ? { ...step, wait: "" } : step,
    );
  },
  night: ({ steps }: MadeJob, { a }: Twist) =>
    steps.map((step, i) => (i === a % steps.length ? { ...step, night: true } : step)),
  byHand: ({ world, steps }: MadeJob, { a, b, c }: Twist) => {
    const does = anyChange(world, a, c);
    return put(steps, b, { ...at(steps, b), does: [does], verb: does.verb, night: false });
  },
  /** A balanced extra pair, as a fitter adds one who undoes a thing once more to see. */
  pair: ({ world, steps }: MadeJob, { a, b, c }: Twist) => {
    const does = anyChange(world, a, c);
    const back = verbs[does.verb]?.pair ?? does.verb;
    const [one, two] = [does, { ...does, verb: back, fresh: c % 2 === 0 ? does.count : 0 }];
    const step = at(steps, b);
    return put(put(steps, b, { ...step, does: [two as Change] }), b, { ...step, does: [one] });
  },
} satisfies Record<string, Way>;

function at(steps: readonly Step[], dice: number): Step {
  const step = steps[dice % steps.length];
  if (!step) throw new Error("a plan without steps");
  return step;
}

function put(steps: readonly Step[], dice: number, step: Step): Step[] {
  return steps.toSpliced(dice % (steps.length + 1), 0, step);
}

function edit(steps: readonly Step[], by: (one: Change) => Change): Step[] {
  return steps.map((step) => ({ ...step, does: step.does.map(by) }));
}

function change(
  { steps }: MadeJob,
  { a }: Twist,
  field: "count" | "fresh",
  by: (one: Change) => Change,
): Step[] {
  const able = steps.flatMap(({ does }) => does.filter((one) => one[field] !== undefined));
  const chosen = able[a % Math.max(1, able.length)];
  return edit(steps, (one) => (one === chosen ? by(one) : one));
}

/** Any verb of the table on any object of the world that it can act on. */
function anyChange(world: World, a: number, c: number): Change {
  const rows = [...world.things.values()].flatMap((thing) =>
    wordsFor(thing).map((verb) => ({ thing, verb })),
  );
  const { thing, verb } = rows[a % rows.length] ?? {};
  if (!thing || verb === undefined) throw new Error("a world without things");
  return { verb, object: thing.name, place: thing.position, ...numbersOf(thing, verb, c) };
}

/** What a change says beside its verb and object. */
function numbersOf(thing: Thing, verb: string, c: number): Partial<Change> {
  const full = thing.fixing?.full ?? thing.welds;
  if (verb.startsWith("leave")) return { count: 1, ...(c % 4 === 0 ? {} : { reason: "by hand" }) };
  if (verb === "watch") return { minutes: 60 };
  if (verb === "move") return { to: c % 2 === 0 ? "back" : "forward" };
  if (full === undefined) return {};
  const fresh = verbs[verb]?.effect === "in" ? { fresh: c % 2 === 0 ? full : 0 } : {};
  return { count: c % 5 === 0 ? 1 : full, ...fresh };
}

const workOf: Partial<Record<Thing["is"], string[]>> = {
  surface: ["bare", "wipe", "prime", "paint", "inspect"],
  joint: ["drill", "separate", "close", "weld", "tack", "inspect"],
  thing: ["set-out", "clear-away", "raise", "lower", "watch", "peel", "compare", "measure", "sign"],
};

function wordsFor({ is }: Thing): string[] {
  const own = Object.keys(verbs).filter(
    (verb) => verbs[verb]?.effect !== "work" && verbs[verb]?.on.includes(is),
  );
  return is === "thing" ? (workOf.thing ?? []) : [...own, ...(workOf[is] ?? [])];
}

const dice = fc.nat(9999);

/** One to three ways to spoil a plan. */
export const twists: fc.Arbitrary<Twist[]> = fc.array(
  fc.record({
    way: fc.constantFrom(...(Object.keys(ways) as Twist["way"][])),
    a: dice,
    b: dice,
    c: dice,
  }),
  { minLength: 1, maxLength: 3 },
);

/** The plan after all its twists. */
export function spoiled(job: MadeJob, list: readonly Twist[]): Step[] {
  return list.reduce(
    (steps, twist) => (steps.length === 0 ? steps : ways[twist.way]({ ...job, steps }, twist)),
    job.steps,
  );
}
