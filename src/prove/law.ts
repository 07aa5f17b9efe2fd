import type { Code } from "../diagnostics/codes.js";
import type { Step } from "../model/plan.js";
import type { Origin } from "../model/source.js";
import type { Change, Thing, World } from "../model/world.js";
import type { State } from "./state.js";

/** A breach of a law, as a law file reports it; the runner adds code and step. */
export interface Breach {
  message: string;
  hints?: string[];
  related?: { origin: Origin; label: string }[];
}

/** One change about to be made, with the car as it is before it. */
export interface Moment {
  world: World;
  state: State;
  step: Step;
  change: Change;
  thing: Thing;
  effect: string;
}

/** One law of a plan: what it looks at before each change, and at the end. */
export interface Law {
  law: number;
  code: Code;
  name: string;
  before?(moment: Moment): Breach[];
  end?(world: World, state: State): Breach[];
}

/** A breach where a condition fails, else none. */
export function breachIf(
  condition: boolean,
  message: string,
  at?: { origin: Origin; label: string },
): Breach[] {
  return condition ? [{ message, ...(at ? { related: [at] } : {}) }] : [];
}
