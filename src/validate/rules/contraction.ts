import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

const contraction =
  /\b(?:\w+n['’]t|(?:I|you|he|she|it|we|they|that|there|who)['’](?:d|ll|m|re|ve)|(?:he|she|it|that|there|here|what|who|where|how|let)['’]s)\b/gi;

/** Two words are written as two: part D, D21. Whose a thing is may be said with 's. */
export const contractions: Rule = wordingRule("contraction", (sentence) =>
  contractionsIn(sentence).map((words) => ({
    words,
    message: `'${words}' runs two words together.`,
    hint: "Write both out: 'do not', 'it is'.",
  })),
);

/** The contractions of a sentence: "don't", "it's", but not "the maker's". */
export function contractionsIn(sentence: string): string[] {
  return [...sentence.matchAll(contraction)].map(([found]) => found);
}
