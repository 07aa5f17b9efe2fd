import { type Brief, type Phase, type Step, phases } from "../model/plan.js";
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
  notChecked: readonly { law: number; name: string }[];
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
  gather: { count: number; name: string; where: string; why: string }[];
  counts: CountRow[];
  messages: Brief["safety"];
  signals: string[];
  total: { off: number; back: number };
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
  return {
    ...rest,
    phases: phasesOf(input, words, bags),
    gather: gatherOf(steps, words),
    counts,
    messages: input.brief.safety,
    signals: ["danger", "warning", "caution", "notice"],
    total: {
      off: sum(count.map((line) => line.off)),
      back: sum(count.map((line) => line.back + line.renewed)),
    },
  };
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

/** New fixings that the refit asks for: one-use ones, and those missing when the car came in. */
function gatherOf(steps: readonly Step[], words: Words): ChecklistView["gather"] {
  return steps.flatMap((step) =>
    step.fixings
      .filter((fixing) => fixing.fresh > 0)
      .map((fixing) => ({
        count: fixing.fresh,
        name: `${fixing.fresh === 1 ? fixing.name : fixing.plural}${fixing.size === "" ? "" : ` ${fixing.size}`}`,
        where: `${step.title}${fixing.place === "" ? "" : `, ${words.sides[fixing.place] ?? fixing.place}`}`,
        why: fixing.oneUse ? "used once" : "missing on this car",
      })),
  );
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
