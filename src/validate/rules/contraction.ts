import { type Rule, spanInside } from "../rule.js";
import { toldIn } from "./language/told.js";

const contraction =
  /\b(?:\w+n['’]t|(?:I|you|he|she|it|we|they|that|there|who)['’](?:d|ll|m|re|ve)|(?:he|she|it|that|there|here|what|who|where|how|let)['’]s)\b/gi;

/** Two words are written as two: part D, D21. Whose a thing is may be said with 's. */
export const contractions: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { sentences, source, path } of toldIn(library))
      for (const found of sentences.flatMap(contractionsIn))
        report({
          code: "contraction",
          message: `'${found}' runs two words together.`,
          span: spanInside(source, path, found),
          hints: ["Write both out: 'do not', 'it is'."],
          related: [],
        });
  },
};

/** The contractions of a sentence: "don't", "it's", but not "the maker's". */
export function contractionsIn(sentence: string): string[] {
  return [...sentence.matchAll(contraction)].map(([found]) => found);
}
