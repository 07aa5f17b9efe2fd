import { didYouMean } from "../../diagnostics/nearest.js";
import { type Rule, spanInside } from "../rule.js";
import { stepsOf } from "../../model/recipe-steps.js";
import { textsOf } from "../texts.js";

/** Each `{name}` in a sentence is a figure of the same step. */
export const blanks: Rule = {
  whole: false,
  run: ({ recipes }, report) => {
    for (const { data, source } of recipes)
      for (const placed of stepsOf(data)) {
        const known = Object.keys(placed.step.figures ?? {});
        for (const { text, path } of textsOf(placed))
          for (const [whole, name = ""] of text.matchAll(/\{([^}]*)\}/g))
            if (!known.includes(name))
              report({
                code: "unknown-name",
                message: `This step has no figure '${name}'.`,
                span: spanInside(source, path, whole),
                hints: didYouMean(name, known),
                related: [],
              });
      }
  },
};
