import type { RecipeStep } from "../model/recipe-step.js";
import { stepsOf } from "../model/recipe-steps.js";
import type { Change } from "../model/world.js";
import type { Visit } from "./closure.js";

/** The id of a step in the plan: its recipe, side and section, and its own id or what it does. */
export function idOf(
  { visit, section }: { visit: Visit; section: string },
  step: RecipeStep,
  verb: string,
  does: readonly Change[],
): string {
  const objects = [...new Set(does.map((change) => change.object))].join("+");
  const setting = step.to === undefined ? "" : `-${step.to.replaceAll(" ", "-")}`;
  const round = step.round === undefined ? "" : `-${step.round}`;
  return fullId(visit, section, step.id ?? `${verb}-${objects}${setting}${round}`);
}

/** The steps of the same recipe that a pause point names by their own id. */
export function againOf({ visit }: { visit: Visit }, { again }: RecipeStep): string[] {
  if (again === undefined) return [];
  return stepsOf(visit.recipe.data).flatMap(({ step: { id }, path: [section] }) =>
    id !== undefined && again.includes(id) ? [fullId(visit, String(section), id)] : [],
  );
}

function fullId({ recipe, position }: Visit, section: string, id: string): string {
  const side = position === "" ? "" : `.${position}`;
  return `${recipe.data.recipe}${side}.${section}.${id}`;
}
