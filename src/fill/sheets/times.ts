import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { type Block, addedUp, knownWaits, partsOf } from "../hours.js";
import { countsFirst } from "../moments.js";
import { crewOf, peopleAt } from "../people.js";
import { runsOf } from "../runs.js";
import { type Sheet, headOf, sum } from "../sheet.js";
import { stepList } from "../step-list.js";
import { waitHtml } from "../step-view.js";
import { type NumberedHold, type Stop, byRole, holdsOf, stopsOf } from "../stops.js";

/** How long each block of the work takes hands on, its waits added up apart, and where the work may be left. */
export const times: Sheet = {
  name: "times",
  applies: ({ steps }) => steps.some((step) => step.minutes[1] > 0),
  view: (input, words) => {
    const { steps } = input;
    const rows = rowsOf(steps, words);
    return {
      ...headOf(input),
      rows,
      parts: partsOf(rows, words),
      all: addedUp("", rows, words),
      known: knownWaits(steps),
    };
  },
};

interface Row extends Block {
  title: string;
  side: string;
  from: string;
  to: string;
  /** How many at a time; from fewest to most where the steps differ. */
  people: string;
  /** The steps that take two people or more, where others take one. */
  second: string;
  /** The steps with a wait after them, and its time where the plan knows it. */
  waits: { n: string; minutes?: [number, number]; knownHtml: string }[];
  /** The pause points in it at which the work may be left for the night. */
  nights: Stop[];
  /** Who must come to it, and for which holds. */
  releases: { role: string; holds: NumberedHold[] }[];
}

/** One row for each run of steps of one task, side, stage and phase. */
function rowsOf(steps: readonly Step[], words: Words): Row[] {
  const stops = { nights: stopsOf(steps).filter(({ night }) => night), holds: holdsOf(steps) };
  const counts = countsFirst(steps, words);
  return runsOf(steps).flatMap((run) => {
    const [first] = run;
    const people = run.map((step) => peopleAt(step.people, counts.has(step.n)));
    return first ? [rowOf(first, run, people, stops, words)] : [];
  });
}

function rowOf(
  first: Step,
  run: readonly Step[],
  people: readonly number[],
  { nights, holds }: { nights: readonly Stop[]; holds: readonly NumberedHold[] },
  { phases, sides, phrases }: Words,
): Row {
  const helped = run.filter((_, i) => (people[i] ?? 1) > 1);
  const minutes = (i: 0 | 1 | 2): number => Math.round(sum(run.map((step) => step.minutes[i])));
  const isIn = ({ n }: { n: string }): boolean => run.some((step) => step.n === n);
  return {
    phase: phases[first.phase] ?? first.phase,
    title: first.title,
    side: sides[first.position] ?? first.position,
    from: first.n,
    to: run.at(-1)?.n ?? first.n,
    low: minutes(0),
    likely: minutes(1),
    high: minutes(2),
    people: crewOf(people),
    second: helped.length < run.length ? stepList(helped, run, phrases["to"] ?? "to") : "",
    waits: run.filter(({ wait }) => wait !== "").map(waitOf),
    nights: nights.filter(isIn),
    releases: byRole(holds.filter(isIn)),
  };
}

function waitOf(step: Step): Row["waits"][number] {
  const { n, waitMinutes: minutes } = step;
  return minutes ? { n, minutes, knownHtml: waitHtml(step) } : { n, knownHtml: "" };
}
