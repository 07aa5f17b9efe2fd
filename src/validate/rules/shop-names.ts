import type { RecipeFile } from "../../model/generated/recipe.js";
import type { Catalog } from "../../model/library.js";
import type { Path } from "../../model/source.js";
import { type Reference, type Rule, lookUp } from "../rule.js";
import { type Placed, stepsOf } from "../../model/recipe-steps.js";

/** Tools, consumables, roles and messages that recipes name stand in a catalog. */
export const shopNames: Rule = {
  whole: true,
  run: ({ recipes, catalog }, report) => {
    for (const { data, source } of recipes)
      lookUp(source, [...ofRecipe(data, catalog), ...ofSteps(data, catalog)], report);
  },
};

function ofRecipe({ tools, safety }: RecipeFile, catalog: Catalog): Reference[] {
  return [
    ...refer(catalog, "tools", tools, ["tools"]),
    ...refer(catalog, "messages", safety, ["safety"]),
  ];
}

function ofSteps(recipe: RecipeFile, catalog: Catalog): Reference[] {
  return stepsOf(recipe).flatMap((placed) => ofStep(placed, catalog));
}

function ofStep({ step, path }: Placed, catalog: Catalog): Reference[] {
  const uses = (step.uses ?? []).flatMap(({ consumable }, i) =>
    refer(catalog, "consumables", consumable, [...path, "uses", i, "consumable"]),
  );
  return [
    ...refer(catalog, "tools", step.tools, [...path, "tools"]),
    ...uses,
    ...refer(catalog, "messages", step.warn, [...path, "warn"]),
    ...refer(catalog, "roles", step.role, [...path, "role"]),
  ];
}

const words = { tools: "tool", consumables: "consumable", roles: "role", messages: "message" };

/** A message may be written out in place of its name; only names are looked up. */
function refer(
  catalog: Catalog,
  shelf: keyof Catalog,
  names: string | readonly unknown[] | undefined,
  path: Path,
): Reference[] {
  const listed = Array.isArray(names);
  return [names ?? []].flat().flatMap((name, i) =>
    typeof name === "string"
      ? {
          name,
          path: listed ? [...path, i] : path,
          known: Object.keys(catalog[shelf]),
          lacks: `No catalog holds the ${words[shelf]}`,
        }
      : [],
  );
}
