import type { RecipeFile } from "./generated/recipe.js";
import { verbs } from "./verbs.js";

/** One step as a recipe writes it. */
export type RecipeStep = NonNullable<RecipeFile["work"]>[number];

/** The verb keys that a step holds; one is right. */
export function verbsOf(step: RecipeStep): string[] {
  return Object.keys(step).filter((key) => key in verbs);
}

/** The step's verb. */
export function verbOf(step: RecipeStep): string | undefined {
  return verbsOf(step)[0];
}

/** The names that the step acts on. */
export function targetsOf(step: RecipeStep): string[] {
  const verb = verbOf(step);
  const value = verb === undefined ? [] : step[verb as "undo"];
  return [value ?? []].flat();
}
