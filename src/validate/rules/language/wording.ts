import type { Code } from "../../../diagnostics/codes.js";
import { type Rule, spanInside } from "../../rule.js";
import { type Use, toldIn } from "./told.js";

/** Words found in a sentence, what is said about them, and the way out. */
export interface Wording {
  words: string;
  message: string;
  hint: string;
}

/** A rule that judges each sentence by itself, of every use or of some. */
export function wordingRule(
  code: Code,
  find: (sentence: string) => readonly Wording[],
  uses?: readonly Use[],
): Rule {
  return {
    whole: false,
    run: (library, report) => {
      for (const { use, sentences, source, path } of toldIn(library)) {
        if (uses && !uses.includes(use)) continue;
        for (const { words, message, hint } of sentences.flatMap((one) => find(one))) {
          const span = spanInside(source, path, words);
          report({ code, message, span, hints: [hint], related: [] });
        }
      }
    },
  };
}
