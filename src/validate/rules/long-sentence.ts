import { type Rule, spanInside } from "../rule.js";
import { bracketsIn, wordsIn } from "./language/sentences.js";
import { toldIn } from "./language/told.js";

const most = 20;
const mostDescribing = 25;

/**
 * A sentence holds at most 20 words, one that only describes 25: ASD-STE100 5.1 and 6.3 (part D, D1 and D2).
 * Messages (B1.13) and what is checked at the car, 'accept' and 'checks', are held to 20 as commands are.
 */
export const longSentence: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library)) {
      const limit = use === "note" || use === "describe" ? mostDescribing : most;
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
