import { unbroken } from "./marks.js";
import { type Brief, type Phase, type Step, phases } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { bagKey, bagsOf } from "./bags.js";
import { type Guards, guardsOf } from "./guards.js";
import { countsFirst } from "./moments.js";
import { crewOf, peopleAt } from "./people.js";
import { remindersOf } from "./reminders.js";
import { runsOf } from "./runs.js";
import { type SheetInput, sum } from "./sheet.js";
import { type StepView, stepView } from "./step-view.js";

/** A run of steps of one task, under one heading. */
export interface BlockView {
  title: string;
  side: string;
  /** The first and the last of its steps. */
  numbers: string;
  meta: string[];
  photos: boolean;
  bag: string;
  steps: StepView[];
}

/** A phase of the job, as the template reads it. */
export interface PhaseView {
  phase: Phase;
  title: string;
  /** The number of its last step. */
  last: string;
  blocks: BlockView[];
}

/** The phases of a plan with their blocks and steps; empty phases are left out. */
export function phasesOf(input: SheetInput, words: Words): PhaseView[] {
  const bags = bagsOf(input.steps);
  const numbers = numbersOf(input.steps);
  const reminders = remindersOf(input, words);
  const countFirst = countsFirst(input.steps, words);
  const totals = { bags: String(bags.size), off: String(sum(input.count.map((line) => line.off))) };
  const done = input.steps.findIndex((step) => step.id === input.resume?.reached);
  const left = input.steps.slice(done + 1);
  const view = (step: Step, guards: readonly Guards[]): StepView => {
    const { hold = 0, pause = 0 } = numbers.get(step.id) ?? {};
    const around = {
      brief: input.brief,
      guards,
      bag: bags.get(bagKey(step)),
      holdNumber: hold,
      pauseNumber: pause,
      steps: input.steps,
      totals,
      words,
      countFirst: countFirst.get(step.n) ?? "",
      reminder: reminders.at.get(step.id),
      closeUp: reminders.closeUpAfter === step.id ? reminders.closeUp : undefined,
    };
    return stepView(step, around);
  };
  return phases.flatMap((phase) => {
    const mine = left.filter((step) => step.phase === phase);
    const runs = runsOf(mine);
    const guards = guardsOf(runs);
    const guarded = (step: Step): StepView => view(step, guards.get(step.id) ?? []);
    const blocks = photographedOnce(
      runs.map((run) => blockView(run, input.brief, words, bags, guarded)),
    );
    const last = mine.at(-1)?.n ?? "";
    return last === "" ? [] : [{ phase, title: words.phases[phase] ?? phase, last, blocks }];
  });
}

/** A part whose work comes in two blocks has its photographs at the first. */
function photographedOnce(blocks: readonly BlockView[]): BlockView[] {
  const same = (a: BlockView, b: BlockView): boolean => a.title === b.title && a.side === b.side;
  return blocks.map((block, i) => ({
    ...block,
    photos: block.photos && !blocks.slice(0, i).some((one) => same(one, block)),
  }));
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

function numbersOfRun(run: readonly Step[]): string {
  return [...new Set([run[0]?.n, run.at(-1)?.n])].join("–");
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
  const steps = run.map(view);
  const crew = steps.map((step) => peopleAt(step.people, step.countFirst !== ""));
  const people = crewOf(crew);
  const said = (phrase: string, number: number | string): string =>
    unbroken(fillIn(words.phrases[phrase] ?? "", { number: String(number) }));
  const zones = [...new Set(run.map((step) => step.zone).filter((zone) => zone !== ""))];
  const out = run.some((step) => effectOf(step.verb) === "out");
  return {
    title: first?.title ?? "",
    side: words.sides[first?.position ?? ""] ?? first?.position ?? "",
    numbers: numbersOfRun(run),
    meta: [
      ...zones.slice(0, 1).map((zone) => brief.zones[zone] ?? zone),
      ...(minutes > 0 ? [said("about-minutes", minutes)] : []),
      said(people === "1" ? "one-person" : "several-people", people),
    ],
    photos: first?.phase === "strip",
    bag: out && bag !== undefined ? String(bag) : "",
    steps,
  };
}
