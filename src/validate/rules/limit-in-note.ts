import { type Rule, spanInside } from "../rule.js";
import { toldIn } from "./language/told.js";

const bounds =
  "at least|at most|no more than|no less than|not more than|not less than|more than|less than|up to|within|below|above|under|over|every";
const limit = new RegExp(String.raw`\{[^}]*\}|\b(?:${bounds}) \d[\d.,/]*`, "i");

/**
 * A figure or a limit stands in the step, which is ticked or initialled; a note is only read: ASD-STE100 5.5.
 * An error, since what is only read is left out.
 */
export const limitInNote: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library))
      for (const sentence of use === "note" ? sentences : []) {
        const found = limit.exec(sentence)?.[0];
        if (found !== undefined)
          report({
            code: "limit-in-note",
            message: `The note holds the limit '${found}', and nobody ticks a note.`,
            span: spanInside(source, path, found),
            hints: ["Say it in the step itself, in 'say', 'back' or 'accept'."],
            related: [],
          });
      }
  },
};
