import { isOf } from "../../model/verbs.js";
import { stepsOf } from "../../model/recipe-steps.js";
import type { Rule } from "../rule.js";

/** A tool that throws sparks belongs to hot work, so that the fire is watched after it, or to a bench away from the car. */
export const sparks: Rule = {
  whole: true,
  run: ({ recipes, catalog }, report) => {
    for (const { data, source } of recipes)
      for (const { step, path } of stepsOf(data)) {
        const verb = Object.keys(step).find((key) => isOf(key, "hot") || key === "bore");
        const at = (step.tools ?? []).findIndex((tool) => catalog.tools[tool]?.sparks === true);
        if (verb !== undefined || at < 0) continue;
        report({
          code: "sparks",
          message: `The tool '${step.tools?.[at]}' throws sparks, and the verb of this step is no hot work.`,
          span: source.spanOf([...path, "tools", at]),
          hints: [
            "Write 'pilot', 'drill' or 'dress' for work at the car, and 'bore' for work at a bench outside the radius.",
          ],
          related: [],
        });
      }
  },
};
