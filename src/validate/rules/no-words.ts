import { verbs } from "../../model/verbs.js";
import { targetsOf, verbOf } from "../../model/recipe-step.js";
import type { Rule } from "../rule.js";

/**
 * Where the way in is told in the recipe's words and the way back is derived, the way back has words too:
 * the verb's own sentence knows nothing of what `say` had to explain.
 */
export const noWords: Rule = {
  whole: false,
  run: ({ recipes }, report) => {
    for (const { data, source } of recipes) {
      if (Array.isArray(data.refit)) continue;
      for (const [i, step] of (data.strip ?? []).entries()) {
        const verb = verbOf(step) ?? "";
        const back = verbs[verb]?.pair;
        if (back === undefined || step.say === undefined || step.back !== undefined) continue;
        report({
          code: "no-words",
          message: `The way back has no words: '${back} ${targetsOf(step).join(", ")}' prints its verb's own sentence.`,
          span: source.spanOf(["strip", i, "say"]),
          hints: ["Write under 'back' how it goes back."],
          related: [],
        });
      }
    }
  },
};
