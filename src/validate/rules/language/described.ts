import type { CatalogFile } from "../../../model/generated/catalog.js";
import type { RangeFile } from "../../../model/generated/range.js";
import type { RecipeFile } from "../../../model/generated/recipe.js";
import type { Path } from "../../../model/source.js";
import { stepsOf } from "../../../model/recipe-steps.js";
import type { PlacedText } from "../../texts.js";

/** The texts of a recipe that describe the job, its worth, its waste, its terms and why a step matters. */
export function describedInRecipe(recipe: RecipeFile): PlacedText[] {
  const { about, worth, permits = [], renew = [], waste = [], terms = [] } = recipe;
  return [
    ...written(about, "about"),
    ...written(worth?.skill, "worth", "skill"),
    ...written(worth?.risk, "worth", "risk"),
    ...permits.flatMap(({ what }, i) => written(what, "permits", i, "what")),
    ...renew.flatMap(({ why }, i) => written(why, "renew", i, "why")),
    ...waste.flatMap((text, i) => written(text, "waste", i)),
    ...terms.flatMap(({ means }, i) => written(means, "terms", i, "means")),
    ...stepsOf(recipe).flatMap(({ step, path }) => [
      ...written(step.critical, ...path, "critical"),
      ...written(step.reason, ...path, "reason"),
    ]),
  ];
}

/** The texts of a range that describe it and say why a part matters. */
export function describedInRange({ about, parts }: RangeFile): PlacedText[] {
  return [
    ...written(about, "about"),
    ...Object.entries(parts).flatMap(([name, { critical, plugs = {} }]) => [
      ...written(critical, "parts", name, "critical"),
      ...Object.entries(plugs).flatMap(([plug, { untested }]) =>
        written(untested, "parts", name, "plugs", plug, "untested"),
      ),
    ]),
  ];
}

/** The texts of a catalog that say why a tool is asked for. */
export function describedInCatalog({ tools = {} }: CatalogFile): PlacedText[] {
  return Object.entries(tools).flatMap(([name, { why }]) => written(why, "tools", name, "why"));
}

function written(text: string | undefined, ...path: Path): PlacedText[] {
  return text === undefined ? [] : [{ text, path }];
}
