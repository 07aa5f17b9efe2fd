import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { marked, markedUnwritten } from "./marks.js";
import { stepList } from "./step-list.js";

/** A pause point: the letter it carries on the checklist, its step, and whether the work may lie there overnight. */
export interface Stop {
  letter: string;
  n: string;
  night: boolean;
}

/** A hold with the number it carries on the checklist. */
export interface NumberedHold {
  number: number;
  n: string;
  kind: string;
  title: string;
  position: string;
  role: string;
  says: string;
  acceptHtml: string;
  /** The same with a line to write on for each value that the maker gives. */
  acceptToWriteHtml: string;
}

/** The pause points of a plan, lettered as on the checklist. */
export function stopsOf(steps: readonly Step[]): Stop[] {
  return steps
    .filter(({ checks }) => checks.length > 0)
    .map(({ n, night }, i) => ({ letter: String.fromCharCode(65 + i), n, night }));
}

/** The steps that are done again before work on a new day, in words. */
export function againAt({ again }: Step, steps: readonly Step[], { phrases }: Words): string {
  const mine = steps.filter(({ id }) => again.includes(id));
  return stepList(mine, steps, phrases["to"] ?? "to");
}

/** The holds of a plan, numbered as on the checklist. */
export function holdsOf(steps: readonly Step[]): NumberedHold[] {
  return steps
    .flatMap((step) => (step.hold ? [{ ...step, hold: step.hold }] : []))
    .map(({ n, title, position, says, figures, hold: { kind, role, accept } }, i) => ({
      number: i + 1,
      n,
      kind,
      title,
      position,
      role,
      says,
      acceptHtml: markedUnwritten(accept, figures),
      acceptToWriteHtml: marked(accept, figures),
    }));
}

/** Holds by the role that releases them, in the order in which each role comes first. */
export function byRole(holds: readonly NumberedHold[]): { role: string; holds: NumberedHold[] }[] {
  const roles = [...new Set(holds.map(({ role }) => role))];
  return roles.map((role) => ({ role, holds: holds.filter((hold) => hold.role === role) }));
}
