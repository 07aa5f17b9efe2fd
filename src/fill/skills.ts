import type { Message, Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { escape, markedUnwritten } from "./marks.js";
import { sum } from "./sheet.js";
import { stepList } from "./step-list.js";
import { type NumberedHold, byRole } from "./stops.js";

/** One thing that a trainee learns on this job, and the standard it is judged by. */
export interface Skill {
  title: string;
  sides: string;
  /** The phase, where a repair is cut into its phases. */
  phase: string;
  /** Its steps, runs together. */
  at: string;
  standardHtml: string[];
  critical: string[];
  /** Whether it is done in one step. */
  single: boolean;
  /** Why a trainee never does it alone, with the steps: who can be hurt by it, that it takes two, that it is permitted. */
  neverAlone: string;
  /** Nothing in it but holds: no hand of a trainee's belongs there. */
  holdsOnly: boolean;
  /** Who releases its holds; a trainee never does. */
  released: { role: string; numbers: string }[];
}

/** The tasks of a plan, both sides of one recipe together; a repair is cut into its phases. */
export function skillsOf(
  steps: readonly Step[],
  holds: readonly NumberedHold[],
  words: Words,
): Skill[] {
  const repairs = repairsOf(steps);
  return groupsOf(steps, repairs).map((mine) => {
    const [first] = mine;
    const held = holds.filter(({ n }) => mine.some((step) => step.n === n));
    const sides = unique(mine.map(({ position }) => words.sides[position] ?? position));
    const cut = first !== undefined && repairs.has(first.task);
    return {
      title: titleOf(mine, cut),
      sides: sides.join(", "),
      phase: cut ? (words.phases[first.phase] ?? first.phase) : "",
      at: stepList(handled(mine), steps, words.phrases["to"] ?? ""),
      single: handled(mine).length === 1,
      standardHtml: standardOf(
        mine,
        { held, next: cut ? nextHold(mine, steps, holds) : undefined },
        words,
      ),
      critical: unique(mine.map(({ critical = "" }) => critical)),
      neverAlone: reasonsOf(mine, steps, words),
      holdsOnly: mine.every(({ hold }) => hold !== undefined),
      released: byRole(held).map(({ role, holds: own }) => ({
        role,
        numbers: own.map(({ number }) => number).join(", "),
      })),
    };
  });
}

/** Steps of one recipe together, in the order of the plan; a recipe that repairs is cut into its phases and stages. */
function groupsOf(steps: readonly Step[], repairs: ReadonlySet<string>): Step[][] {
  const groups = new Map<string, Step[]>();
  for (const step of steps) {
    const { task, phase, title } = step;
    const key = repairs.has(task) ? `${task} ${phase} ${title}` : task;
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups.values()];
}

function repairsOf(steps: readonly Step[]): Set<string> {
  return new Set(steps.filter(({ phase }) => phase === "repair").map(({ task }) => task));
}

/** The steps that a hand does: no hold and no pause point is a trainee's. */
function handled(steps: readonly Step[]): Step[] {
  const hands = steps.filter(({ hold, checks }) => hold === undefined && checks.length === 0);
  return hands.length > 0 ? hands : [...steps];
}

/** A part of a repair that is one piece of work has the name of that work. */
function titleOf(steps: readonly Step[], cut: boolean): string {
  const [first, ...rest] = handled(steps);
  const [named] = steps;
  if (!cut || !first || first.hold || rest.length > 0) return named?.title ?? "";
  return (sentencesOf(first.says)[0] ?? first.says).replace(/\.$/, "");
}

/** Why a step is never a trainee's alone, each with its words. */
const grave: readonly [string, (step: Step) => boolean][] = [
  ["alone-critical", ({ critical }) => critical !== undefined],
  ["alone-people", ({ people }) => people > 1],
  ["alone-permit", ({ verb }) => verb === "permit"],
  ["alone-danger", warns("danger")],
  ["alone-warning", warns("warning")],
];

function warns(word: Message["word"]): (step: Step) => boolean {
  return ({ messages }) => messages.some((message) => message.word === word);
}

/** Each reason why a trainee never does a task alone, with the steps it holds for. */
function reasonsOf(mine: readonly Step[], steps: readonly Step[], { phrases }: Words): string {
  return grave
    .map(([key, holds]) => ({ key, at: stepList(mine.filter(holds), steps, phrases["to"] ?? "") }))
    .filter(({ at }) => at !== "")
    .map(({ key, at }) => `${phrases[key] ?? key} (${at})`)
    .join("; ");
}

/** The hold that stands behind a part of a repair which has none of its own. */
function nextHold(
  mine: readonly Step[],
  steps: readonly Step[],
  holds: readonly NumberedHold[],
): NumberedHold | undefined {
  const [first, last] = [mine[0], mine.at(-1)];
  const after = last ? steps.slice(steps.indexOf(last) + 1) : [];
  const next = after.find(({ hold, task }) => hold !== undefined && task === first?.task);
  return mine.some(({ hold }) => hold) ? undefined : holds.find(({ n }) => n === next?.n);
}

/** The holds that a task is judged by: its own, or the next one behind it. */
interface Judges {
  held: readonly NumberedHold[];
  next: NumberedHold | undefined;
}

function standardOf(steps: readonly Step[], { held, next }: Judges, words: Words): string[] {
  const { phrases } = words;
  const tries = steps.filter(({ verb }) => verb === "try").map(({ says }) => escape(says));
  const limits = limitsOf(handled(steps), words);
  const values = { number: String(next?.number), step: next?.n ?? "" };
  const behind = next ? fillIn(phrases["judged-next"] ?? "", values) : "";
  const all = unique([
    ...countsOf(steps, words).map(escape),
    ...held.map((hold) => hold.acceptHtml),
    ...tries,
    limits,
    limits === "" ? (next?.acceptHtml ?? "") : "",
    escape(behind),
  ]);
  return all.length > 0 ? all : [escape(phrases["judged-steps"] ?? "")];
}

function countsOf(steps: readonly Step[], { phrases }: Words): string[] {
  const counted = (effect: string): number => sum(steps.map((step) => countOf(step, effect)));
  const [off, back] = [counted("out"), counted("in")];
  const fresh = sum(steps.flatMap(({ fixings }) => fixings.map((one) => one.fresh)));
  const values = { off: String(off), back: String(back), fresh: String(fresh) };
  return [countKey(off, back), steps.some(asksTorque) ? "judged-torque" : ""]
    .filter((key) => key !== "")
    .map((key) => fillIn(phrases[key] ?? key, values));
}

/** The sentences that set a limit, each once with its step: those with a figure, and those that say what must or may be. */
function limitsOf(steps: readonly Step[], { phrases }: Words): string {
  const limits = (phrases["limit-words"] ?? "").split(" ");
  const once = new Map<string, string>();
  for (const { n, verb, says, figures } of steps)
    for (const text of verb === "try" ? [] : sentencesOf(says)) {
      const sets = text.split(/[^\p{L}]+/u).some((word) => limits.includes(word));
      const measured = figures.some((figure) => text.includes(figure.text));
      if ((sets || measured) && !once.has(text))
        once.set(text, `<b>${escape(n)}</b> ${markedUnwritten(text, figures)}`);
    }
  return [...once.values()].join(" ");
}

function sentencesOf(text: string): string[] {
  return text.split(/(?<=[.!?])\s+/);
}

function countKey(off: number, back: number): string {
  if (off > 0) return back > 0 ? "judged-count" : "judged-out";
  return back > 0 ? "judged-back" : "";
}

function countOf(step: Step, effect: string): number {
  return effectOf(step.verb) === effect ? sum(step.fixings.map(({ count }) => count)) : 0;
}

/** Whether a step is done to a torque that the maker gives. */
export function asksTorque({ verb, fixings, figures }: Step): boolean {
  if (effectOf(verb) === "out") return false;
  const asked = fixings.some(({ torque }) => torque?.source === "maker");
  return asked || figures.some(({ text, mark }) => mark === "M" && /(N·m|lbf·ft)$/.test(text));
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)].filter((text) => text !== "");
}
