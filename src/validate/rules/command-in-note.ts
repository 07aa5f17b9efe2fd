import type { Rule } from "../rule.js";
import { isOrder, isRequirement } from "./language/commands.js";
import { wordingRule } from "./language/wording.js";

/**
 * What must be done stands in the step, which is ticked; a note says what is so: ASD-STE100 5.5 (part D, D7).
 * An error, as `limit-in-note` is.
 */
export const commandInNote: Rule = wordingRule(
  "command-in-note",
  (words) =>
    isOrder(words) || isRequirement(words)
      ? [
          {
            words,
            message: "The note says what must be done, and nobody ticks a note.",
            hint: "Say it in the step itself, in 'say', 'back' or 'accept'; where something can happen, write 'can'.",
          },
        ]
      : [],
  ["note"],
);
