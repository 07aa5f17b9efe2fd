import type { Phase, Step } from "./plan.js";

/** One recipe at one position, its steps ready in both directions; `arrange` orders these. */
export interface Task {
  id: string;
  title: string;
  /** It opens and closes the job: it stands before all others, and at the end after them. */
  frames: boolean;
  /** Its steps by phase, each list in the recipe's own order. */
  steps: Record<Phase, Step[]>;
  /** The tasks that must be off before this one is touched, and back only after it. */
  after: readonly string[];
  /** Supplies that this task isolates, and those that it needs isolated. */
  isolates: readonly string[];
  needsIsolated: readonly string[];
  /** Steps that need a supply live: step id and supply. */
  liveSteps: readonly (readonly [string, string])[];
  /** Steps that ask for a supply to be isolated, beside all those that part or join something. */
  isolatedSteps?: readonly string[];
  /** Refit steps that wait until another task's part is back, or that come while it is still off. */
  waitsFor?: readonly { step: string; task: string; back: boolean }[];
}
