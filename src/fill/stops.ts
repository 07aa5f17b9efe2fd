import type { Step } from "../model/plan.js";

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
  role: string;
  says: string;
  accept: string;
  critical: string;
}

/** The pause points of a plan, lettered as on the checklist. */
export function stopsOf(steps: readonly Step[]): Stop[] {
  return steps
    .filter(({ checks }) => checks.length > 0)
    .map(({ n, night }, i) => ({ letter: String.fromCharCode(65 + i), n, night }));
}

/** The holds of a plan, numbered as on the checklist. */
export function holdsOf(steps: readonly Step[]): NumberedHold[] {
  const holds = steps.flatMap(({ n, hold, says, critical = "" }) =>
    hold ? [{ n, says, critical, kind: hold.kind, role: hold.role, accept: hold.accept }] : [],
  );
  return holds.map((hold, i) => ({ number: i + 1, ...hold }));
}
