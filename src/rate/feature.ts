import type { Step } from "../model/plan.js";

/** A step of the way back, with what stands round about it. */
export interface Subject {
  step: Step;
  /** Every step of the plan, in order. */
  steps: readonly Step[];
  /** The steps that are rated: those of refit and close that somebody does. */
  rated: readonly Step[];
}

/** A published feature of steps that are easily left out (Reason 2002, Qual Saf Health Care 11:40). */
export interface Feature {
  name: string;
  has(subject: Subject): boolean;
}
