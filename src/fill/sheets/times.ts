import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { closings } from "../moments.js";
import { peopleAt } from "../people.js";
import { runsOf } from "../runs.js";
import { type Sheet, headOf, sum } from "../sheet.js";
import { waitHtml } from "../step-view.js";
import { type Stop, stopsOf } from "../stops.js";

/** How long each block of the work takes hands on, its waits, and where the work may be left. */
export const times: Sheet = {
  name: "times",
  applies: ({ steps }) => steps.some((step) => step.minutes[1] > 0),
  view: (input, words) => {
    const rows = rowsOf(input.steps, words);
    return { ...headOf(input), rows, all: totalOf(rows), waiting: waitingOf(rows) };
  },
};

interface Row {
  phase: string;
  title: string;
  side: string;
  from: string;
  to: string;
  low: number;
  likely: number;
  high: number;
  /** How many at a time; from fewest to most where the steps differ. */
  people: string;
  /** The steps with a wait after them, and its time where the plan knows it. */
  waits: { n: string; knownHtml: string }[];
  /** The pause points in it at which the work may be left for the night. */
  nights: Stop[];
}

/** One row for each run of steps of one task, side, stage and phase. */
function rowsOf(steps: readonly Step[], words: Words): Row[] {
  const nights = stopsOf(steps).filter(({ night }) => night);
  const counts = new Set(closings(steps, words).map(({ step }) => step));
  return runsOf(steps).flatMap((run) => {
    const [first] = run;
    const people = run.map((step) => peopleAt(step.people, counts.has(step.n)));
    return first ? [rowOf(first, run, people, nights, words)] : [];
  });
}

function rowOf(
  first: Step,
  run: readonly Step[],
  people: readonly number[],
  nights: readonly Stop[],
  { phases, sides }: Words,
): Row {
  const minutes = (i: 0 | 1 | 2): number => Math.round(sum(run.map((step) => step.minutes[i])));
  const [fewest, most] = [Math.min(...people), Math.max(...people)];
  return {
    phase: phases[first.phase] ?? first.phase,
    title: first.title,
    side: sides[first.position] ?? first.position,
    from: first.n,
    to: run.at(-1)?.n ?? first.n,
    low: minutes(0),
    likely: minutes(1),
    high: minutes(2),
    people: [...new Set([fewest, most])].join("–"),
    waits: run.flatMap((step) =>
      step.wait === ""
        ? []
        : [{ n: step.n, knownHtml: step.wait.includes("__") ? "" : waitHtml(step) }],
    ),
    nights: nights.filter(({ n }) => run.some((step) => step.n === n)),
  };
}

/** The sums, in hours to one decimal. */
function totalOf(rows: readonly Row[]): { low: number; likely: number; high: number } {
  const hours = (key: "low" | "likely" | "high"): number =>
    Math.round(sum(rows.map((row) => row[key])) / 6) / 10;
  return { low: hours("low"), likely: hours("likely"), high: hours("high") };
}

/** How many waits come on top, how many of them have a printed time, and at how many places the night can fall. */
function waitingOf(rows: readonly Row[]): { waits: number; known: number; nights: number } {
  const waits = rows.flatMap((row) => row.waits);
  return {
    waits: waits.length,
    known: waits.filter(({ knownHtml }) => knownHtml !== "").length,
    nights: rows.flatMap((row) => row.nights).length,
  };
}
