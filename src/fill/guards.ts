import type { Words } from "../model/words.js";
import type { Message, Step } from "../model/plan.js";
import { messageKey, says, signalWords } from "./messages.js";

/** A safety message as it stands before a step, or before several that follow one another. */
export interface Guard extends Message {
  /** The first and the last step that it guards, where it guards more than one. */
  from?: string;
  upTo?: string;
}

/** The messages of one signal word before a step: those said whole, and those that stand whole before and are said in short. */
export interface Guards {
  word: Message["word"];
  whole: readonly Guard[];
  short: readonly Guard[];
}

/** The most steps that one message speaks for: they stay in sight of it (the number is ours). */
const most = 6;

/**
 * The messages before each step of some runs that follow one another. One that guards steps in a row is said before
 * the first of them, with their numbers (ANSI Z535.6, section safety message, from memory). Where it is needed later
 * in the run or in the next one it is said in short, if it has a short form; after a pause, where somebody else may
 * go on, it is said whole again.
 */
export function guardsOf(runs: readonly (readonly Step[])[]): Map<string, Guards[]> {
  const guards = new Map<string, Guards[]>();
  let before = new Set<string>();
  for (const run of runs) before = guardRun(run, before, guards);
  return guards;
}

/** Notes the messages before each step of a run, and gives those that stand whole in it and hold after it. */
function guardRun(
  run: readonly Step[],
  before: ReadonlySet<string>,
  guards: Map<string, Guards[]>,
): Set<string> {
  const spoken = new Map<string, number>();
  const [known, whole] = [new Set(before), new Set<string>()];
  for (const [at, step] of run.entries()) {
    const mine = step.messages.filter((one) => (spoken.get(messageKey(one)) ?? -1) < at);
    const said = mine.map((message) => {
      const end = lastGuarded(run, at, message);
      spoken.set(messageKey(message), end);
      const guard = end === at ? message : { ...message, from: step.n, upTo: run[end]?.n ?? "" };
      return { guard, inShort: message.short !== undefined && known.has(messageKey(message)) };
    });
    guards.set(step.id, groupsOf(said));
    for (const key of said
      .filter(({ inShort }) => !inShort)
      .map(({ guard }) => messageKey(guard))) {
      known.add(key);
      whole.add(key);
    }
    if (step.checks.length > 0) [known, whole].forEach((one) => one.clear());
  }
  return whole;
}

/** The hazards of a step that its own bars do not name, since they are said before an earlier one; in words. */
export function stillSaid(
  messages: readonly Message[],
  guards: readonly Guards[],
  { phrases }: Words,
): string {
  const said = new Set(guards.flatMap(({ whole, short }) => [...whole, ...short]).map(messageKey));
  const words = signalWords.flatMap((word) => {
    const mine = messages.filter((one) => one.word === word && !said.has(messageKey(one)));
    const named = mine.map(({ hazard }) => hazard).join("; ");
    return mine.length > 0 ? [`${(phrases[word] ?? word).toUpperCase()}: ${named}`] : [];
  });
  return words.length > 0 ? `${phrases["still-holds"] ?? ""} ${words.join(". ")}.` : "";
}

/** Messages by their signal word, each in short where it has a short form. */
export function shortly(messages: readonly Message[]): Guards[] {
  const once = new Map(messages.map((message) => [messageKey(message), message]));
  return groupsOf(
    [...once.values()].map((guard) => ({ guard, inShort: guard.short !== undefined })),
  );
}

function groupsOf(said: readonly { guard: Guard; inShort: boolean }[]): Guards[] {
  return signalWords.flatMap((word) => {
    const mine = said.filter(({ guard }) => guard.word === word);
    const those = (short: boolean): Guard[] =>
      mine.filter(({ inShort }) => inShort === short).map(({ guard }) => guard);
    return mine.length > 0 ? [{ word, whole: those(false), short: those(true) }] : [];
  });
}

function lastGuarded(run: readonly Step[], at: number, message: Message): number {
  const after = run.slice(at + 1, at + most);
  const free = after.findIndex((step) => stops(step) || !says(step, message));
  return at + (free < 0 ? after.length : free);
}

function stops({ hold, checks }: Step): boolean {
  return hold !== undefined || checks.length > 0;
}
