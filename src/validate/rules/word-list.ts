import { type Rule, spanInside } from "../rule.js";
import { toldIn } from "./language/told.js";

/** One thing has one name: the catalogs' word list says which of two words a library writes (part D, D2). */
export const wordList: Rule = {
  whole: false,
  run: (library, report) => {
    const words = library.catalogs.flatMap(({ data }) => Object.entries(data.words ?? {}));
    for (const { sentences, source, path } of toldIn(library))
      for (const [word, instead] of words)
        for (const [found] of sentences.join(" ").matchAll(patternOf(word)))
          report({
            code: "word-list",
            message: `This library does not write '${found}'.`,
            span: spanInside(source, path, found),
            hints: [`Write '${instead}'.`],
            related: [],
          });
  },
};

function patternOf(word: string): RegExp {
  const plain = word.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
  return new RegExp(String.raw`(?<![\w-])${plain}(?![\w-])`, "gi");
}
