import type { Figure } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import { hasBlank } from "./marks.js";
import { stepList } from "./step-list.js";

/** The steps that ask for a figure of the maker's manual or of a product's sheet, in words; empty where none does. */
export function lookUpsOf(steps: readonly Step[], { phrases }: Words): string {
  return stepList(steps.filter(asks), steps, phrases["to"] ?? "to");
}

/** Whether a step waits for a time that only the maker's sheet tells. */
export function asksToWait({ wait, waitSource }: Step): boolean {
  return waitSource === "maker" && hasBlank(wait);
}

function asks(step: Step): boolean {
  const { figures, facts, fixings, verb } = step;
  const tightened = effectOf(verb) === "in" ? fixings : [];
  return (
    figures.some(({ text, source }) => source === "maker" && hasBlank(text)) ||
    facts.some(({ figure }) => isOpen(figure)) ||
    tightened.some(({ torque }) => isOpen(torque)) ||
    asksToWait(step)
  );
}

function isOpen(figure: Figure | undefined): boolean {
  return figure?.source === "maker" && figure.value === undefined;
}
