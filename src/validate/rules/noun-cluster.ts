import { type Rule, spanInside } from "../rule.js";
import { namesIn, runsIn } from "./language/names.js";

const most = 3;

/**
 * A name strings at most three nouns together, or nobody sees which belongs to which: ASD-STE100 2.1 (part D, D8).
 * The library's own names are the lexicon; a hyphenated word is one.
 */
export const nounCluster: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { name, source, path } of namesIn(library))
      for (const run of runsIn(name).filter((words) => words.length > most))
        report({
          code: "noun-cluster",
          message: `'${run.join(" ")}' strings ${run.length} words together.`,
          span: spanInside(source, path, run.join(" ")),
          hints: ["Hyphenate those that belong together, or say it with 'of' or 'for'."],
          related: [],
        });
  },
};
