import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

const bounds =
  "at least|at most|no more than|no less than|not more than|not less than|more than|less than|up to|within|below|above|under|over|every";
const limit = new RegExp(String.raw`\{[^}]*\}|\b(?:${bounds}) \d[\d.,/]*`, "i");

/**
 * A figure or a limit stands in the step, which is ticked or initialled; a note is only read: ASD-STE100 5.5.
 * An error, since what is only read is left out.
 */
export const limitInNote: Rule = wordingRule(
  "limit-in-note",
  (sentence) =>
    (limit.exec(sentence)?.slice(0, 1) ?? []).map((words) => ({
      words,
      message: `The note holds the limit '${words}', and nobody ticks a note.`,
      hint: "Say it in the step itself, in 'say', 'back' or 'accept'.",
    })),
  ["note"],
);
