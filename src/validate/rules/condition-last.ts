import { type Rule, spanInside } from "../rule.js";
import { toldIn } from "./language/told.js";

/** Words that open a condition; 'see if' and its like ask a question, and 'if needed' is a vague word. */
const condition =
  /(?<!^)(?<!\b(?:see|check|look|ask|know|say|even) )\b(?:if|when|unless|in case|as soon as|provided)\b(?! (?:required|needed|necessary|possible|appropriate)\b).*$/is;

/**
 * The condition comes before the command, or the hand has moved before the eye is there: ASD-STE100 5.4.
 * 'until', 'before', 'after' and 'while' say how long and in what order, not whether, and may come last.
 */
export const conditionLast: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library))
      for (const sentence of use === "do" || use === "avoid" ? sentences : []) {
        const found = condition.exec(sentence)?.[0];
        if (found !== undefined)
          report({
            code: "condition-last",
            message: "The condition comes after the command.",
            span: spanInside(source, path, found),
            hints: ["Write the condition first, then a comma, then the command."],
            related: [],
          });
      }
  },
};
