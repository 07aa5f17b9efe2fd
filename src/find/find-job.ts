import type { Outcome } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";
import type { Filed, Library } from "../model/library.js";
import { fits } from "./fitted.js";

/** A job found: its range, its recipe, and all recipes of the range. */
export interface Job {
  range: Filed<RangeFile>;
  recipe: Filed<RecipeFile>;
  recipes: Filed<RecipeFile>[];
}

/**
 * Finds a job by name: a recipe, or a part to strip on a car with these options; `range/name`, or bare where
 * only one range has it.
 */
export function findJob(
  library: Library,
  job: string,
  ofRange: string | undefined,
  given: Readonly<Record<string, string>>,
): Outcome<Job> {
  const [rangeName, name = job] = job.includes("/") ? job.split("/") : [ofRange, job];
  const hits = library.ranges
    .filter((range) => rangeName === undefined || range.data.range === rangeName)
    .flatMap((range): Job[] => {
      const recipes = recipesFor(library, range);
      const recipe = recipeFor(range.data, recipes, name, given);
      return recipe ? [{ range, recipe, recipes }] : [];
    });
  const [first, second] = hits;
  if (first && !second) return { value: first, diagnostics: [] };
  const known = library.recipes.map((one) => one.data.recipe);
  const message = second
    ? `'${job}' stands in more than one range.`
    : `There is no job '${job}' in this library.`;
  const hints = second ? ["Write it as range/recipe."] : didYouMean(name, known);
  return { diagnostics: [{ code: "unknown-name", message, hints, related: [] }] };
}

/** A recipe of that name, else the one that takes off or eases that part of this car. */
function recipeFor(
  range: RangeFile,
  recipes: readonly Filed<RecipeFile>[],
  name: string,
  given: Readonly<Record<string, string>>,
): Filed<RecipeFile> | undefined {
  const own = recipes.find((one) => one.data.recipe === name);
  const parts = recipes.filter(({ data }) => data.strips === name || data.eases === name);
  return own ?? parts.find((one) => fits(range, one.data, given)) ?? parts[0];
}

/** The recipes of a range: those in its folder, and those outside every range's folder. */
export function recipesFor(library: Library, range: Filed<RangeFile>): Filed<RecipeFile>[] {
  const folder = (file: string): string => file.split("/").slice(0, -1).join("/");
  const inside = (one: { folder: string }, of: Filed<RangeFile>): boolean =>
    `${one.folder}/`.startsWith(`${folder(of.source.file)}/`);
  return library.recipes.filter(
    (one) => inside(one, range) || !library.ranges.some((other) => inside(one, other)),
  );
}
