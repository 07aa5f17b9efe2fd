import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { Step } from "../model/plan.js";
import type { Path } from "../model/source.js";

/** A step to put in after another one, and where that was asked for. */
export interface Insertion {
  after: string;
  step: Step;
  index: number;
}

/** Reports something at a place of the file that asks for the insertions. */
export type Report = (
  code: Diagnostic["code"],
  message: string,
  path: Path,
  hints: string[],
) => void;

/** Puts steps in after others: printed numbers stay, and what follows step 31 is numbered 31.1, 31.2, ... */
export function insert(
  steps: readonly Step[],
  insertions: readonly Insertion[],
  reached: string,
  report: Report,
): Step[] {
  const ids = new Map(steps.map((step, i) => [step.id, i]));
  const done = ids.get(reached);
  if (done === undefined)
    report(
      "unknown-name",
      `This plan has no step '${reached}'.`,
      ["reached"],
      didYouMean(reached, ids.keys()),
    );
  for (const { after, index } of insertions) {
    const at = ids.get(after);
    const path = ["steps", index, "after"];
    if (at === undefined)
      report(
        "unknown-name",
        `This plan has no step '${after}'.`,
        path,
        didYouMean(after, ids.keys()),
      );
    else if (at < (done ?? 0))
      report("done-already", `Step '${after}' lies before the step that is reached.`, path, [
        `Put it after '${reached}' or later.`,
      ]);
  }
  return steps.flatMap((step) => {
    const mine = insertions.filter(({ after }) => after === step.id);
    return [step, ...mine.map((one, i) => ({ ...one.step, n: `${step.n}.${i + 1}` }))];
  });
}
