import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { bagKey, bagsOf, fixingsAreOff } from "./bags.js";
import { placeOf } from "./place.js";

/** A moment at which two people count: before which step, what goes on next, and which bags must be empty by then. */
export interface Moment {
  step: string;
  what: string;
  bags: string;
}

/** What two people count before each step of the checklist that asks for it, by the step. */
export function countsFirst(steps: readonly Step[], words: Words): ReadonlyMap<string, string> {
  const { phrases } = words;
  const first = firstOff(steps);
  const empty = phrases["count-empty"] ?? "";
  return new Map([
    ...(first ? [[first.n, phrases["count-all"] ?? ""] as const] : []),
    ...closings(steps, words).map(({ step, bags }) => [step, fillIn(empty, { bags })] as const),
  ]);
}

/**
 * Before the first part comes off, before each closing of a hidden space behind which a bag was emptied, at each
 * hand-over, and at the end.
 */
export function momentsOf(steps: readonly Step[], words: Words): Moment[] {
  const { phrases } = words;
  const first = firstOff(steps);
  const last = steps.findLast((step) => step.hold) ?? steps.at(-1);
  const at = ({ n }: Step, what: string, bags: string): Moment[] => [
    { step: n, what: phrases[what] ?? what, bags: phrases[bags] ?? "" },
  ];
  const closing = new Map(closings(steps, words).map((moment) => [moment.step, [moment]]));
  return steps.flatMap((step) => [
    ...(step === first ? at(step, "baseline", "every-bag") : []),
    ...(step.night && fixingsAreOff(step, steps)
      ? at(step, "hand-over", "bags-out")
      : (closing.get(step.n) ?? [])),
    ...(step === last ? at(step, "at-the-end", "every-bag") : []),
  ]);
}

/** The step before which nothing is off yet. */
function firstOff(steps: readonly Step[]): Step | undefined {
  return steps.find((step) => step.phase === "strip");
}

/** Before each closing of a hidden space: the bags that were emptied since the one before it. */
function closings(steps: readonly Step[], words: Words): Moment[] {
  const bagsBack = lastBackOf(steps);
  let counted = 0;
  return steps.flatMap((step, here) => {
    const closes = step.hides.length > 0 && ["on", "fit-new"].includes(effectOf(step.verb) ?? "");
    if (!closes) return [];
    const since = bagsBack.filter(({ end }) => end >= counted && end < here);
    counted = here;
    const bags = since.map(({ number }) => number).join(", ");
    return bags === "" ? [] : [{ step: step.n, what: placeOf(step, words) || step.title, bags }];
  });
}

/** A bag, and the place in the plan of the step that puts the last of it back. */
interface BagBack {
  number: number;
  end: number;
}

function lastBackOf(steps: readonly Step[]): BagBack[] {
  return [...bagsOf(steps)].flatMap(([key, number]) => {
    const end = steps.findLastIndex((step) => bagKey(step) === key && effectOf(step.verb) === "in");
    return end < 0 ? [] : [{ number, end }];
  });
}
