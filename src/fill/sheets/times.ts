import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { runsOf } from "../runs.js";
import { type Sheet, headOf, sum } from "../sheet.js";
import { holdsOf } from "../stops.js";

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
  /** The hold at which it ends, where a repair is cut at its holds. */
  upTo: string;
  /** The steps with a wait after them, and its time where the plan knows it. */
  waits: { n: string; known: string }[];
  night: boolean;
}

/** One row for each run of steps of one task, side and phase; the repair itself is cut after each hold. */
function rowsOf(steps: readonly Step[], words: Words): Row[] {
  const holds = holdsOf(steps);
  return runsOf(steps)
    .flatMap(cutAtHolds)
    .flatMap((run) => {
      const [first] = run;
      const end = holds.find(({ n }) => n === run.at(-1)?.n);
      const upTo = first?.phase === "repair" && end ? String(end.number) : "";
      return first ? [{ ...rowOf(first, run, words), upTo }] : [];
    });
}

function cutAtHolds(run: readonly Step[]): Step[][] {
  const parts: Step[][] = [[]];
  for (const step of run) {
    parts.at(-1)?.push(step);
    if (step.phase === "repair" && step.hold) parts.push([]);
  }
  return parts.filter((part) => part.length > 0);
}

function rowOf(first: Step, run: readonly Step[], { phases, sides }: Words): Omit<Row, "upTo"> {
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
    waits: run.flatMap(({ n, wait }) =>
      wait === "" ? [] : [{ n, known: wait.includes("__") ? "" : wait }],
    ),
    night: run.some((step) => step.night),
  };
}

/** The sums, in hours to one decimal. */
function totalOf(rows: readonly Row[]): { low: number; likely: number; high: number } {
  const hours = (key: "low" | "likely" | "high"): number =>
    Math.round(sum(rows.map((row) => row[key])) / 6) / 10;
  return { low: hours("low"), likely: hours("likely"), high: hours("high") };
}
