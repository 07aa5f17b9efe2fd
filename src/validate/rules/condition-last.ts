import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

/** Words that open a condition; 'see if' and its like ask a question, and 'if needed' is a vague word. */
const condition =
  /(?<!^)(?<!\b(?:see|check|look|ask|know|say|even) )\b(?:if|when|unless|in case|as soon as|provided)\b(?! (?:required|needed|necessary|possible|appropriate)\b).*$/is;

/**
 * The condition comes before the command, or the hand has moved before the eye is there: ASD-STE100 5.4.
 * 'until', 'before', 'after' and 'while' say how long and in what order, not whether, and may come last.
 */
export const conditionLast: Rule = wordingRule(
  "condition-last",
  (sentence) =>
    (condition.exec(sentence)?.slice(0, 1) ?? []).map((words) => ({
      words,
      message: "The condition comes after the command.",
      hint: "Write the condition first, then a comma, then the command.",
    })),
  ["do", "avoid"],
);
