import type { Brief, Step } from "../model/plan.js";
import type { CountLine, Finding } from "../model/proof.js";
import type { LabelPaper } from "../model/printing.js";
import type { Resume } from "../model/plan-file.js";
import type { Rating } from "../model/rating.js";
import type { Words } from "../model/words.js";

/** What every sheet is filled from: the plan and what was decided about it. */
export interface SheetInput {
  /** The job as it is called on the command line: range/recipe. */
  job: string;
  steps: readonly Step[];
  count: readonly CountLine[];
  brief: Brief;
  car: { name: string; taken: readonly string[]; found: readonly { note: string }[] };
  revision: string;
  findings: readonly Finding[];
  ratings: readonly Rating[];
  draft: boolean;
  large: boolean;
  /** The names of the sheets that are printed together. */
  printed: readonly string[];
  /** How many pages each sheet has and where its headings stand, as far as they are laid out. */
  laid: Readonly<Record<string, Laid>>;
  /** The sheet of labels that bag labels go onto, and the height of its paper in millimetres. */
  labelPaper?: LabelPaper & { paperHeight: number };
  /** Where this pack goes on from one that was printed before. */
  resume?: Resume;
}

/** A sheet that is laid out: how many pages it has, and on which of them each heading stands. */
export interface Laid {
  pages: number;
  headings: readonly { level: number; text: string; page: number }[];
}

/** One sheet of a pack: its name is that of its template, and `view` says what the template reads. */
export interface Sheet {
  name: string;
  /** Another template, where what is printed on asks for one. */
  template?(input: SheetInput): string;
  /** Whether it tells where in the others something stands, and so is laid out after them. */
  comesLast?: true;
  /** Whether this plan has anything for the sheet. */
  applies(input: SheetInput): boolean;
  view(input: SheetInput, words: Words): object;
}

/** What the head of every sheet reads. */
export interface Head extends Omit<SheetInput, "steps" | "count"> {
  total: Totals;
  /** The sheets that are printed together, by name. */
  elsewhere: Record<string, true>;
  /** The number of the last step that is done. */
  resumed: string;
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
  const resumed = steps.find((step) => step.id === rest.resume?.reached)?.n ?? "";
  const total = totalsOf(steps, count);
  const elsewhere = Object.fromEntries(rest.printed.map((name) => [name, true as const]));
  return { ...rest, brief: { ...rest.brief, options }, total, resumed, elsewhere };
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

/** Things two in a row, the last alone where their number is odd. */
export function pairsOf<T>(all: readonly T[]): T[][] {
  const rows = Math.ceil(all.length / 2);
  return Array.from({ length: rows }, (_, i) => all.slice(2 * i, 2 * i + 2));
}

/** The sum of some numbers. */
export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
