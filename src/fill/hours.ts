import type { Step } from "../model/plan.js";
import { sum } from "./sheet.js";

/** Hours hands on, each at least 1. */
export interface Hours {
  low: number;
  likely: number;
  high: number;
}

/** The hours of a plan, from the steps' own minutes. */
export function hoursOf(steps: readonly Step[]): Hours {
  return hoursBy(steps, () => 1);
}

/** The same with each person of a step counted, as they are paid. */
export function paidHoursOf(steps: readonly Step[]): Hours {
  return hoursBy(steps, ({ people }) => people);
}

function hoursBy(steps: readonly Step[], times: (step: Step) => number): Hours {
  const hours = (i: 0 | 1 | 2): number =>
    Math.max(1, Math.round(sum(steps.map((step) => step.minutes[i] * times(step))) / 60));
  return { low: hours(0), likely: hours(1), high: hours(2) };
}
