import type { Message, Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { escape } from "./marks.js";
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
  /** Somebody can be badly hurt by it, now or on the road, or it takes two: it is not done alone by a trainee. */
  neverAlone: boolean;
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
      title: first?.title ?? "",
      sides: sides.join(", "),
      phase: cut ? (words.phases[first.phase] ?? first.phase) : "",
      at: stepList(handled(mine), steps, words.phrases["to"] ?? ""),
      standardHtml: standardOf(mine, held, words),
      critical: unique([
        ...mine.map(({ critical = "" }) => critical),
        ...dangersOf(mine),
        warningsOf(mine, words),
      ]),
      neverAlone: mine.some(isGrave),
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

function isGrave({ messages, critical, people, verb }: Step): boolean {
  const grave = messages.some(({ word }) => word === "danger" || word === "warning");
  return grave || critical !== undefined || people > 1 || verb === "permit";
}

/** The hazards of a task that a warning names, in one line. */
function warningsOf(steps: readonly Step[], { phrases }: Words): string {
  const hazards = unique(saidWith("warning", steps).map(({ hazard }) => hazard)).join("; ");
  return hazards === "" ? "" : fillIn(phrases["judged-warnings"] ?? "", { hazards });
}

function saidWith(word: Message["word"], steps: readonly Step[]): Message[] {
  return steps.flatMap(({ messages }) => messages.filter((message) => message.word === word));
}

function dangersOf(steps: readonly Step[]): string[] {
  return saidWith("danger", steps).map(({ hazard, avoid }) => `${hazard}. ${avoid}`);
}

function standardOf(
  steps: readonly Step[],
  holds: readonly NumberedHold[],
  { phrases }: Words,
): string[] {
  const counted = (effect: string): number => sum(steps.map((step) => countOf(step, effect)));
  const [off, back] = [counted("out"), counted("in")];
  const fresh = sum(steps.flatMap(({ fixings }) => fixings.map((one) => one.fresh)));
  const torque = steps.some(asksTorque) ? "judged-torque" : "";
  const tries = steps.filter(({ verb }) => verb === "try").map(({ says }) => escape(says));
  const said = [countKey(off, back), torque]
    .filter((key) => key !== "")
    .map((key) =>
      fillIn(phrases[key] ?? key, { off: String(off), back: String(back), fresh: String(fresh) }),
    );
  const all = unique([...said.map(escape), ...holds.map((hold) => hold.acceptHtml), ...tries]);
  return all.length > 0 ? all : [escape(phrases["judged-steps"] ?? "")];
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
