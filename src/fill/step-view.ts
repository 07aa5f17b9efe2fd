import { markOf } from "../figures/format.js";
import type { Figure } from "../model/figure.js";
import type { Brief, Hold, Step } from "../model/plan.js";
import { type CountLine, countLines, joinsOf } from "./count-lines.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { fixingsAreOff } from "./bags.js";
import { type Guards, stillSaid } from "./guards.js";
import { pairsOf } from "./sheet.js";
import type { CloseUpView, ReminderView } from "./reminders.js";
import { againAt } from "./stops.js";
import { figureHtml, markHtml, marked } from "./marks.js";

/** A reading to write down, as the template reads it. */
export interface ReadingView {
  name: string;
  nominal: string;
  unit: string;
}

/** One step as the template reads it; texts that end in `Html` are escaped and marked already. */
export interface StepView {
  n: string;
  /** What the step's box says aloud. */
  done: string;
  guards: readonly Guards[];
  /** The hazards whose messages stand before an earlier step and guard this one too, in words. */
  still: string;
  /** All its hazards, for the pages on which it goes on. */
  holds: string;
  saysHtml: string;
  tools: string;
  uses: string;
  people: number;
  lift: boolean;
  found: string[];
  noteHtml: string;
  counts: CountLine[];
  joins: number;
  /** Whether the joins are made again, and their tags taken off. */
  joining: boolean;
  /** Whether its photographs have numbers to write down. */
  photos: boolean;
  /** Whether there is something for the count column. */
  counting: boolean;
  /** Whether only work is counted: welds, holes. */
  workOnly: boolean;
  tally?: { expect: number; of: string };
  waitHtml: string;
  facts: { field: string; valueHtml: string }[];
  readings: ReadingView[];
  /** Whether a reading is named so long that each needs a line of its own. */
  longNames: boolean;
  /** Readings too many to stand in the step: a table, two beside each other. */
  readingRows: ReadingView[][];
  critical: string;
  hold?: HoldView;
  pause?: PauseView;
  /** What two people count before it. */
  countFirst: string;
  reminder?: ReminderView | undefined;
  closeUp?: CloseUpView | undefined;
}

/** A hold, witness point or decision as the template reads it. */
export interface HoldView extends Omit<Hold, "readings"> {
  number: number;
  word: string;
  readings: ReadingView[];
  longNames: boolean;
  acceptHtml: string;
  next: string;
}

/** A pause point as the template reads it. */
export interface PauseView {
  letter: string;
  night: boolean;
  /** Whether two people count before the work is left here: fixings are off. */
  count: boolean;
  checks: string[];
  /** The numbers of the steps that are done again before work on a new day. */
  again: string;
}

/** What a step's view needs from round about it. */
export interface Around {
  brief: Brief;
  /** The messages that are said before it. */
  guards: readonly Guards[];
  bag: number | undefined;
  holdNumber: number;
  pauseNumber: number;
  /** All steps of the plan. */
  steps: readonly Step[];
  /** What two people count before it. */
  countFirst: string;
  totals: Readonly<Record<string, string>>;
  words: Words;
  reminder: ReminderView | undefined;
  closeUp: CloseUpView | undefined;
}

const mostReadings = 6;

/** A step as the template reads it. */
export function stepView(step: Step, around: Around): StepView {
  const { brief, words } = around;
  const counts = countLines(step, around.bag, words);
  const joins = joinsOf(step);
  const readings = step.readings.map((one) => readingView(one, words));
  const counting = isCounting(step, counts, joins);
  const many = !step.hold && readings.length > mostReadings;
  const toolName = (id: string): string => brief.tools.find((tool) => tool.id === id)?.name ?? id;
  const supplyName = (id: string): string =>
    brief.consumables.find((one) => one.id === id)?.name ?? id;
  return {
    n: step.n,
    done: fillIn(words.phrases["step-done"] ?? "", { n: step.n }),
    guards: around.guards,
    still: stillSaid(step.messages, around.guards, words),
    holds: stillSaid(step.messages, [], words),
    saysHtml: marked(step.says, step.figures),
    tools: step.tools.map(toolName).join(", "),
    uses: step.uses.map((use) => supplyName(use.consumable)).join(", "),
    people: step.people,
    lift: step.people > 1,
    found: step.found,
    noteHtml: marked(step.note ?? "", step.figures),
    counts,
    joins,
    joining: step.does.some(({ verb }) => effectOf(verb) === "make-join"),
    counting,
    workOnly: counts.length === 0 && joins === 0 && step.count !== undefined,
    ...(step.count ? { tally: step.count } : {}),
    photos: step.verb === "photograph",
    waitHtml: waitHtml(step),
    facts: step.facts.map(({ field, value, figure }) => ({
      field,
      valueHtml: valueHtml(value, figure, words),
    })),
    readings: step.hold || many ? [] : readings,
    longNames: counting || areLong(readings, mostInHalf.step),
    readingRows: many ? pairsOf(readings) : [],
    critical: step.critical ?? "",
    countFirst: around.countFirst,
    reminder: around.reminder,
    closeUp: around.closeUp,
    ...(step.hold ? { hold: holdView(step.hold, step, around) } : {}),
    ...(step.checks.length > 0 ? { pause: pauseView(step, around) } : {}),
  };
}

/** Whether a step has something for the count column. */
function isCounting({ count }: Step, counts: readonly CountLine[], joins: number): boolean {
  return counts.length > 0 || joins > 0 || count !== undefined;
}

/** The time of a wait with its source mark, or a blank for it. */
export function waitHtml({ wait, waitSource }: Step): string {
  const mark = waitSource === undefined ? "" : markHtml(markOf(waitSource));
  return wait === "" ? "" : `${marked(wait, [])}${mark}`;
}

/** The value of a fact: its words, its figure with the source mark, or both. */
export function valueHtml(
  value: string | undefined,
  figure: Figure | undefined,
  words: Words,
): string {
  const quantity = figure ? figureHtml(figure, words) : "";
  return [value === undefined ? "" : marked(value, []), quantity]
    .filter((text) => text !== "")
    .join(" ");
}

/** So many characters stand on two lines of half a row, beside the blank (measured at the size of the text). */
const mostInHalf = { step: 38, hold: 26 };

/** Longer than half a row takes, or with a value to hold it against; a reading alone has room for one line. */
function areLong(readings: readonly ReadingView[], inHalf: number): boolean {
  const most = readings.length > 1 ? inHalf : inHalf / 2 - 3;
  return readings.some(({ name, nominal }) => name.length > most || nominal !== "");
}

function readingView(
  { name, figure }: { name: string; figure?: Figure },
  words: Words,
): ReadingView {
  const unit = figure?.unit === undefined || figure.unit === "1" ? "" : figure.unit;
  const nominal = figure?.value === undefined ? "" : figureHtml(figure, words);
  return { name, nominal, unit };
}

function holdView(hold: Hold, step: Step, { holdNumber, steps, words }: Around): HoldView {
  const readings = hold.readings.map((one) => readingView(one, words));
  return {
    ...hold,
    readings,
    longNames: areLong(readings, mostInHalf.hold),
    acceptHtml: marked(hold.accept, step.figures),
    number: holdNumber,
    word: words.phrases[hold.kind] ?? "",
    next: steps[steps.indexOf(step) + 1]?.n ?? "",
  };
}

function pauseView(step: Step, { pauseNumber, totals, steps, words }: Around): PauseView {
  const fill = (text: string): string =>
    text.replaceAll(/\{([a-z]+)\}/g, (all, name: string) => totals[name] ?? all);
  return {
    letter: String.fromCharCode(64 + pauseNumber),
    night: step.night,
    count: step.night && fixingsAreOff(step, steps),
    checks: step.checks.map(fill),
    again: againAt(step, steps, words),
  };
}
