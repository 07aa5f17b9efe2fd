import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

/** Two thoughts are two sentences: ASD-STE100 8.1 (part D, D15). */
export const semicolon: Rule = wordingRule("semicolon", (sentence) =>
  sentence.includes(";")
    ? [
        {
          words: sentence.slice(sentence.indexOf(";")),
          message: "A semicolon makes one sentence of two.",
          hint: "End the first with a full stop and begin the second with a capital letter.",
        },
      ]
    : [],
);
