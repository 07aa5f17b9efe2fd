import type { Catalog, Filed } from "../../model/library.js";
import type { RecipeFile } from "../../model/generated/recipe.js";
import { verbOf } from "../../model/recipe-step.js";
import { effectOf } from "../../model/verbs.js";
import type { Report, Rule } from "../rule.js";
import { type Placed, stepsOf } from "../../model/recipe-steps.js";

/** Only a role that may release stands at a hold, a witness point or a decision. */
export const releases: Rule = {
  whole: true,
  run: ({ recipes, catalog }, report) => {
    for (const recipe of recipes)
      for (const placed of stepsOf(recipe.data)) judge(recipe, placed, catalog, report);
  },
};

function judge(
  { source }: Filed<RecipeFile>,
  { step, path }: Placed,
  { roles }: Catalog,
  report: Report,
): void {
  const role = Object.entries(roles).find(([name]) => name === step.role);
  const releasing = effectOf(verbOf(step)) === "release";
  if (!releasing || role === undefined || role[1].releases === true) return;
  const able = Object.keys(roles).filter((name) => roles[name]?.releases === true);
  report({
    code: "trainee-release",
    message: `A ${role[1].name} cannot release a hold.`,
    span: source.spanOf([...path, "role"]),
    hints: [`These roles can: ${able.join(", ") || "none in this library"}.`],
    related: [],
  });
}
