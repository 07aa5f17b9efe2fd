import { type Rule, spanInside } from "../rule.js";
import { isOrder, isRequirement } from "./language/commands.js";
import { toldIn } from "./language/told.js";

/**
 * What must be done stands in the step, which is ticked; a note says what is so: ASD-STE100 5.5 (part D, D7).
 * An error, as `limit-in-note` is.
 */
export const commandInNote: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library))
      for (const sentence of use === "note" ? sentences : [])
        if (isOrder(sentence) || isRequirement(sentence))
          report({
            code: "command-in-note",
            message: "The note says what must be done, and nobody ticks a note.",
            span: spanInside(source, path, sentence),
            hints: [
              "Say it in the step itself, in 'say', 'back' or 'accept'; where something can happen, write 'can'.",
            ],
            related: [],
          });
  },
};
