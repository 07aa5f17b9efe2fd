import { type Rule, spanInside } from "../rule.js";
import { bracketsIn, wordsIn } from "./language/sentences.js";
import { toldIn } from "./language/told.js";

const most = 20;
const mostInNote = 25;

/** A sentence holds at most 20 words, a descriptive one 25: ASD-STE100 5.1 and 6.3; messages too (B1.13). */
export const longSentence: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library)) {
      const limit = use === "note" ? mostInNote : most;
      for (const sentence of sentences.flatMap((one) => [one, ...bracketsIn(one)]))
        if (wordsIn(sentence) > limit)
          report({
            code: "long-sentence",
            message: `This sentence has ${wordsIn(sentence)} words; at most ${limit} are read well at the car.`,
            span: spanInside(source, path, sentence),
            hints: ["Make two sentences of it, or two steps where it tells two things to do."],
            related: [],
          });
    }
  },
};
