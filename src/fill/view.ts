import { type Brief, type Phase, type Step, phases } from "../model/plan.js";
import { type GatherView, gatherOf } from "./gather.js";
import type { CountLine, Finding } from "../model/proof.js";
import { verbs } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import { bagKey, bagsOf } from "./bags.js";
import { type StepView, stepView } from "./step-view.js";

/** What a sheet is filled from: the plan and what was decided about it. */
export interface SheetInput {
  steps: readonly Step[];
  count: readonly CountLine[];
  brief: Brief;
  car: { name: string; taken: readonly string[]; found: readonly { note: string }[] };
  revision: string;
  findings: readonly Finding[];
  draft: boolean;
  large: boolean;
}

/** A run of steps of one task, under one heading. */
export interface BlockView {
  title: string;
  side: string;
  meta: string[];
  photos: boolean;
  bag: string;
  steps: StepView[];
}

/** A phase of the job, as the template reads it. */
export interface PhaseView {
  phase: Phase;
  title: string;
  blocks: BlockView[];
}

/** Everything that the checklist's template reads. */
export interface ChecklistView extends Omit<SheetInput, "steps" | "count"> {
  phases: PhaseView[];
  gather: GatherView;
  counts: CountRow[];
  messages: Brief["safety"];
  /** The most people that a step asks for. */
  people: number;
  lifts: boolean;
  hours: { low: number; likely: number; high: number };
  total: Totals;
}

/** What the sheet counts as a whole. */
export interface Totals {
  steps: number;
  holds: number;
  off: number;
  added: number;
  back: number;
  renewed: number;
  leftOut: number;
}

/** A line of the closing count, as the template reads it. */
export interface CountRow extends CountLine {
  name: string;
  size: string;
  where: string;
  side: string;
  bag: string;
}

/** Builds the checklist's view of a plan. */
export function checklistView(input: SheetInput, words: Words): ChecklistView {
  const { steps, count, ...rest } = input;
  const bags = bagsOf(steps);
  const counts = count.map((line) => countRow(line, steps, bags, words));
  const people = Math.max(1, ...steps.map((step) => step.people));
  const options = input.brief.options.map((one) => ({
    ...one,
    taken: input.car.taken.includes(one.option),
  }));
  return {
    ...rest,
    brief: { ...input.brief, options },
    phases: phasesOf(input, words, bags),
    gather: gatherOf(input.brief, steps, words),
    counts,
    messages: input.brief.safety,
    people,
    lifts: people > 1,
    hours: hoursOf(steps),
    total: totalsOf(steps, count),
  };
}

function totalsOf(steps: readonly Step[], count: readonly CountLine[]): Totals {
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

/** Hands-on hours, from the steps' own minutes. */
function hoursOf(steps: readonly Step[]): ChecklistView["hours"] {
  const hours = (i: 0 | 1 | 2): number =>
    Math.max(1, Math.round(sum(steps.map((step) => step.minutes[i])) / 60));
  return { low: hours(0), likely: hours(1), high: hours(2) };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function phasesOf(input: SheetInput, words: Words, bags: ReadonlyMap<string, number>): PhaseView[] {
  const numbers = numbersOf(input.steps);
  const totals = { bags: String(bags.size), off: String(sum(input.count.map((line) => line.off))) };
  const view = (step: Step): StepView => {
    const at = input.steps.indexOf(step);
    const { hold = 0, pause = 0 } = numbers.get(step.id) ?? {};
    const around = {
      brief: input.brief,
      bag: bags.get(bagKey(step)),
      holdNumber: hold,
      pauseNumber: pause,
      next: input.steps[at + 1],
      totals,
    };
    return stepView(step, around);
  };
  return phases.flatMap((phase) => {
    const mine = input.steps.filter((step) => step.phase === phase);
    const blocks = runs(mine).map((run) => blockView(run, input.brief, words, bags, view));
    return blocks.length > 0 ? [{ phase, title: words.phases[phase] ?? phase, blocks }] : [];
  });
}

function numbersOf(steps: readonly Step[]): Map<string, { hold: number; pause: number }> {
  let [hold, pause] = [0, 0];
  return new Map(
    steps.map((step) => {
      if (step.hold) hold++;
      if (step.checks.length > 0) pause++;
      return [step.id, { hold, pause }];
    }),
  );
}

/** Cuts steps wherever the task or its side changes. */
function runs(steps: readonly Step[]): Step[][] {
  const all: Step[][] = [];
  for (const step of steps) {
    const last = all.at(-1);
    const same = last?.[0] && bagKey(last[0]) === bagKey(step);
    if (last && same) last.push(step);
    else all.push([step]);
  }
  return all;
}

function blockView(
  run: readonly Step[],
  brief: Brief,
  words: Words,
  bags: ReadonlyMap<string, number>,
  view: (step: Step) => StepView,
): BlockView {
  const [first] = run;
  const bag = first && bags.get(bagKey(first));
  const minutes = Math.round(sum(run.map((step) => step.minutes[1])));
  const people = Math.max(1, ...run.map((step) => step.people));
  const zones = [...new Set(run.map((step) => step.zone).filter((zone) => zone !== ""))];
  const out = run.some((step) => verbs[step.verb]?.effect === "out");
  return {
    title: first?.title ?? "",
    side: words.sides[first?.position ?? ""] ?? first?.position ?? "",
    meta: [
      ...zones.slice(0, 1).map((zone) => brief.zones[zone] ?? zone),
      ...(minutes > 0 ? [`about ${minutes} min`] : []),
      people === 1 ? "1 person" : `${people} people`,
    ],
    photos: first?.phase === "strip",
    bag: out && bag !== undefined ? String(bag) : "",
    steps: run.map(view),
  };
}

function countRow(
  line: CountLine,
  steps: readonly Step[],
  bags: ReadonlyMap<string, number>,
  words: Words,
): CountRow {
  const step = steps.find((one) =>
    one.fixings.some((fixing) => fixing.kind === line.kind && fixing.place === line.place),
  );
  const fixing = step?.fixings.find((one) => one.kind === line.kind);
  const bag = step && fixing && !fixing.oneUse ? bags.get(bagKey(step)) : undefined;
  return {
    ...line,
    name: fixing?.plural ?? line.kind,
    size: fixing?.size ?? "",
    where: fixing?.where ?? "",
    side: words.sides[line.place] ?? line.place,
    bag: bag === undefined ? "" : String(bag),
  };
}
