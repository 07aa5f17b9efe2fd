import { type Rule, spanInside } from "../rule.js";
import { isCommand, isRequirement } from "./language/commands.js";
import { toldIn } from "./language/told.js";

/**
 * A step, and how to avoid a hazard, begins with a command or with the condition for it: ASD-STE100 5.3 and 7.2 (B1.12).
 * A later sentence may say what must or may not be so: 'The cloth must stay dry.'
 */
export const notACommand: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library))
      for (const [i, sentence] of (use === "do" || use === "avoid" ? sentences : []).entries()) {
        if (isCommand(sentence) || (i > 0 && isRequirement(sentence))) continue;
        report({
          code: "not-a-command",
          message: "This sentence does not tell anybody to do anything.",
          span: spanInside(source, path, sentence),
          hints: ["Begin with what to do: 'Undo …', or with its condition: 'If …, undo …'."],
          related: [],
        });
      }
  },
};
