import type { Step, StepFixing } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import { bagKey, bagsOf, isBagged } from "./bags.js";
import { figureHtml, unbroken } from "./marks.js";
import { sum } from "./sheet.js";

/** One kind of fixing in a bag, at one place. */
export interface LabelLine {
  name: string;
  size: string;
  where: string;
  count: number;
  /** How many go back, and how many of them are new. */
  back: number;
  renew: number;
  leftOut: number;
  torqueHtml: string;
  /** The torque is the maker's, and no value is known here. */
  makers: boolean;
}

/** The label of one bag. */
export interface Label {
  number: number;
  of: number;
  title: string;
  side: string;
  lines: LabelLine[];
  /** Fixings used once: the new ones that go back, which do not lie in the bag. */
  renewed: { count: number; name: string; size: string }[];
  out: string[];
  back: string[];
}

/** A label for each bag of a plan, in the order of the bags. */
export function labelsOf(steps: readonly Step[], words: Words): Label[] {
  const bags = [...bagsOf(steps)];
  return bags.map(([key, number]) => {
    const mine = steps.filter((step) => bagKey(step) === key && step.fixings.length > 0);
    const [first] = mine;
    const out = mine.filter((step) => effectOf(step.verb) === "out");
    const off = out.flatMap(({ fixings }) => fixings);
    const { title = "", position = "" } = first ?? {};
    return {
      number,
      of: bags.length,
      title,
      side: words.sides[position] ?? position,
      lines: off.filter(({ oneUse }) => !oneUse).map((fixing) => lineOf(fixing, mine, words)),
      renewed: renewedOf(mine),
      out: ends(out.filter(isBagged)),
      back: ends(mine.filter((step) => effectOf(step.verb) !== "out" && refills(step, off))),
    };
  });
}

/** Whether a step puts back what was in the bag. */
function refills({ fixings }: Step, off: readonly StepFixing[]): boolean {
  const bagged = off.filter(({ oneUse }) => !oneUse);
  return fixings.some((one) => bagged.some((other) => isSame(one, other)));
}

function lineOf(fixing: StepFixing, steps: readonly Step[], words: Words): LabelLine {
  const of = (effect: string): StepFixing[] =>
    steps
      .filter((step) => effectOf(step.verb) === effect)
      .flatMap(({ fixings }) => fixings.filter((one) => isSame(one, fixing)));
  const { torque, where } = fixing;
  return {
    ...named(fixing),
    where,
    back: sum(of("in").map(({ count }) => count)),
    renew: sum(of("in").map(({ fresh }) => fresh)),
    leftOut: sum(of("leave-out").map(({ count }) => count)),
    makers: torque !== undefined && torque.value === undefined,
    torqueHtml: torque ? figureHtml(torque, words) : "",
  };
}

/** The new fixings that go back for those used once, each kind and place together. */
function renewedOf(steps: readonly Step[]): Label["renewed"] {
  const fresh = steps
    .flatMap(({ fixings }) => fixings)
    .filter((one) => one.oneUse && one.fresh > 0);
  const once = fresh.filter((one, at) => fresh.findIndex((other) => isSame(one, other)) === at);
  return once.map((one) => ({
    ...named(one),
    count: sum(fresh.filter((other) => isSame(one, other)).map((other) => other.fresh)),
  }));
}

function isSame(one: StepFixing, other: StepFixing): boolean {
  return one.kind === other.kind && one.place === other.place;
}

function named(fixing: StepFixing): { count: number; name: string; size: string } {
  const { count, name, plural, size } = fixing;
  return { count, name: count === 1 ? name : plural, size: unbroken(size) };
}

/** The first and the last of some steps, or the only one. */
function ends(steps: readonly Step[]): string[] {
  const numbers = [steps[0]?.n, steps.at(-1)?.n].filter((n) => n !== undefined);
  return [...new Set(numbers)];
}
