import type { Brief, Step } from "../model/plan.js";
import type { CountLine, Finding } from "../model/proof.js";
import type { Rating } from "../model/rating.js";
import type { Words } from "../model/words.js";

/** What every sheet is filled from: the plan and what was decided about it. */
export interface SheetInput {
  steps: readonly Step[];
  count: readonly CountLine[];
  brief: Brief;
  car: { name: string; taken: readonly string[]; found: readonly { note: string }[] };
  revision: string;
  findings: readonly Finding[];
  ratings: readonly Rating[];
  draft: boolean;
  large: boolean;
}

/** One sheet of a pack: its name is that of its template, and `view` says what the template reads. */
export interface Sheet {
  name: string;
  /** Whether this plan has anything for the sheet. */
  applies(input: SheetInput): boolean;
  view(input: SheetInput, words: Words): object;
}

/** What the head of every sheet reads. */
export interface Head extends Omit<SheetInput, "steps" | "count"> {
  total: Totals;
}

/** What a plan counts as a whole. */
export interface Totals {
  steps: number;
  holds: number;
  off: number;
  added: number;
  back: number;
  renewed: number;
  leftOut: number;
}

/** Builds the head of a sheet. */
export function headOf({ steps, count, ...rest }: SheetInput): Head {
  const options = rest.brief.options.map((one) => ({
    ...one,
    taken: rest.car.taken.includes(one.option),
  }));
  return { ...rest, brief: { ...rest.brief, options }, total: totalsOf(steps, count) };
}

/** Adds up the lines of a count. */
export function totalsOf(steps: readonly Step[], count: readonly CountLine[]): Totals {
  const of = (key: "off" | "added" | "back" | "renewed" | "leftOut"): number =>
    sum(count.map((line) => line[key]));
  return {
    steps: steps.length,
    holds: steps.filter((step) => step.hold).length,
    off: of("off"),
    added: of("added"),
    back: of("back"),
    renewed: of("renewed"),
    leftOut: of("leftOut"),
  };
}

/** The sum of some numbers. */
export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
