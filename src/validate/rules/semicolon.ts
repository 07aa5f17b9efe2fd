import { type Rule, spanInside } from "../rule.js";
import { toldIn } from "./language/told.js";

/** Two thoughts are two sentences: ASD-STE100 8.1 (part D, D15). */
export const semicolon: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { sentences, source, path } of toldIn(library))
      for (const sentence of sentences.filter((one) => one.includes(";")))
        report({
          code: "semicolon",
          message: "A semicolon makes one sentence of two.",
          span: spanInside(source, path, sentence.slice(sentence.indexOf(";"))),
          hints: ["End the first with a full stop and begin the second with a capital letter."],
          related: [],
        });
  },
};
