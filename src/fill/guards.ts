import type { Message, Step } from "../model/plan.js";
import { gravestFirst, messageKey, says } from "./messages.js";

/** A safety message as it stands before a step, or before several that follow one another. */
export interface Guard extends Message {
  /** The first and the last step that it guards, where it guards more than one. */
  from?: string;
  upTo?: string;
}

/** The most steps that one message speaks for: they stay in sight of it (the number is ours). */
const most = 5;

/**
 * The messages before each step of a run. One that guards steps in a row is said before the first of them, with
 * their numbers (ANSI Z535.6, section safety message, from memory); after a hold or a pause it is said again.
 */
export function guardsOf(run: readonly Step[]): Map<string, Guard[]> {
  const guards = new Map<string, Guard[]>();
  const spoken = new Map<string, number>();
  for (const [at, step] of run.entries()) {
    const mine = gravestFirst(step.messages).filter(
      (one) => (spoken.get(messageKey(one)) ?? -1) < at,
    );
    guards.set(
      step.id,
      mine.map((message) => {
        const end = lastGuarded(run, at, message);
        spoken.set(messageKey(message), end);
        return end === at ? message : { ...message, from: step.n, upTo: run[end]?.n ?? "" };
      }),
    );
  }
  return guards;
}

function lastGuarded(run: readonly Step[], at: number, message: Message): number {
  const after = run.slice(at + 1, at + most);
  const free = after.findIndex((step) => stops(step) || !says(step, message));
  return at + (free < 0 ? after.length : free);
}

function stops({ hold, checks }: Step): boolean {
  return hold !== undefined || checks.length > 0;
}
