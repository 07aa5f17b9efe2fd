import type { Code } from "../diagnostics/codes.js";
import type { Origin } from "./source.js";

/** A breach of a law at a step, or at the end of the plan where no step is named. */
export interface Finding {
  code: Code;
  message: string;
  step?: { id: string; n: string; origin: Origin };
  hints: string[];
  related: { origin: Origin; label: string }[];
}

/** One law's verdict. */
export interface LawVerdict {
  law: number;
  name: string;
  held: boolean;
  findings: Finding[];
}

/** The count of one fixing at one place over a whole plan. */
export interface CountLine {
  kind: string;
  place: string;
  off: number;
  added: number;
  back: number;
  renewed: number;
  leftOut: number;
}

/** What `prove` decided, and the counts it arrived at. */
export interface Proof {
  laws: LawVerdict[];
  count: CountLine[];
}
