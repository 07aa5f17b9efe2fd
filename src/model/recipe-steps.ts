import type { RecipeFile } from "./generated/recipe.js";
import type { RecipeStep } from "./recipe-step.js";
import type { Path } from "./source.js";

const sections = ["prepare", "strip", "check", "record", "work", "close"] as const;

/** A step of a recipe and where it stands. */
export interface Placed {
  step: RecipeStep;
  path: Path;
}

/** Every step that a recipe writes, whatever its section. */
export function stepsOf(recipe: RecipeFile): Placed[] {
  const back = Array.isArray(recipe.refit) ? recipe.refit : [];
  const place = (section: string, steps: readonly RecipeStep[]): Placed[] =>
    steps.map((step, i) => ({ step, path: [section, i] }));
  return [
    ...sections.flatMap((section) => place(section, recipe[section] ?? [])),
    ...place("refit", back),
  ];
}
