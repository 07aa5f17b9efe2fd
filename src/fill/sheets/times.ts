import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { runsOf } from "../runs.js";
import { type Sheet, headOf, sum } from "../sheet.js";

/** How long each block of the work takes hands on, its waits, and where the work may be left. */
export const times: Sheet = {
  name: "times",
  applies: ({ steps }) => steps.some((step) => step.minutes[1] > 0),
  view: (input, words) => {
    const rows = rowsOf(input.steps, words);
    return { ...headOf(input), rows, all: totalOf(rows) };
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
  people: number;
  waits: string;
  night: boolean;
}

/** One row for each run of steps of one task, side and phase. */
function rowsOf(steps: readonly Step[], words: Words): Row[] {
  return runsOf(steps).flatMap((run) => {
    const [first] = run;
    return first ? [rowOf(first, run, words)] : [];
  });
}

function rowOf(first: Step, run: readonly Step[], { phases, sides }: Words): Row {
  const minutes = (i: 0 | 1 | 2): number => Math.round(sum(run.map((step) => step.minutes[i])));
  return {
    phase: phases[first.phase] ?? first.phase,
    title: first.title,
    side: sides[first.position] ?? first.position,
    from: first.n,
    to: run.at(-1)?.n ?? first.n,
    low: minutes(0),
    likely: minutes(1),
    high: minutes(2),
    people: Math.max(...run.map((step) => step.people)),
    waits: run
      .flatMap(({ n, wait }) => (wait === "" ? [] : [`${n}: ${wait.replaceAll("_", "")}`]))
      .join("; "),
    night: run.some((step) => step.night),
  };
}

/** The sums, in hours to one decimal. */
function totalOf(rows: readonly Row[]): { low: number; likely: number; high: number } {
  const hours = (key: "low" | "likely" | "high"): number =>
    Math.round(sum(rows.map((row) => row[key])) / 6) / 10;
  return { low: hours("low"), likely: hours("likely"), high: hours("high") };
}
