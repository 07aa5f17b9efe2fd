import type { CatalogFile } from "../../model/generated/catalog.js";
import type { RecipeFile } from "../../model/generated/recipe.js";
import { type Catalog, shelves } from "../../model/library.js";
import type { Path } from "../../model/source.js";
import type { WrittenMessage } from "../../model/wear.js";
import { type Reference, type Rule, lookUp } from "../rule.js";
import { type Placed, stepsOf } from "../../model/recipe-steps.js";

/** Tools, consumables, roles and messages that recipes name stand in a catalog, and all that messages say to wear. */
export const shopNames: Rule = {
  whole: true,
  run: ({ recipes, catalogs, catalog }, report) => {
    for (const { data, source } of catalogs) lookUp(source, ofCatalog(data, catalog), report);
    for (const { data, source } of recipes)
      lookUp(source, [...ofRecipe(data, catalog), ...ofSteps(data, catalog)], report);
  },
};

function ofCatalog({ wear = {}, messages = {} }: CatalogFile, catalog: Catalog): Reference[] {
  return [
    ...Object.entries(wear).flatMap(([id, { also }]) =>
      refer(catalog, "wear", also, ["wear", id, "also"]),
    ),
    ...Object.entries(messages).flatMap(([name, { wear: worn }]) =>
      refer(catalog, "wear", worn, ["messages", name, "wear"]),
    ),
  ];
}

function ofRecipe({ tools, safety }: RecipeFile, catalog: Catalog): Reference[] {
  return [...refer(catalog, "tools", tools, ["tools"]), ...ofMessages(catalog, safety, ["safety"])];
}

function ofSteps(recipe: RecipeFile, catalog: Catalog): Reference[] {
  return stepsOf(recipe).flatMap((placed) => shopNamesAt(placed, catalog));
}

/** All that a step names of a catalog. */
export function shopNamesAt({ step, path }: Placed, catalog: Catalog): Reference[] {
  const uses = (step.uses ?? []).flatMap(({ consumable }, i) =>
    refer(catalog, "consumables", consumable, [...path, "uses", i, "consumable"]),
  );
  return [
    ...refer(catalog, "tools", step.tools, [...path, "tools"]),
    ...uses,
    ...ofMessages(catalog, step.warn, [...path, "warn"]),
    ...refer(catalog, "roles", step.role, [...path, "role"]),
  ];
}

/** Messages by name, and what those that are written out in place of a name say to wear. */
function ofMessages(
  catalog: Catalog,
  messages: readonly (string | WrittenMessage)[] = [],
  path: Path,
): Reference[] {
  return messages.flatMap((message, i) =>
    typeof message === "string"
      ? refer(catalog, "messages", message, [...path, i])
      : refer(catalog, "wear", message.wear, [...path, i, "wear"]),
  );
}

function refer(
  catalog: Catalog,
  shelf: keyof Catalog,
  names: string | readonly string[] | undefined,
  path: Path,
): Reference[] {
  const listed = Array.isArray(names);
  return [names ?? []].flat().map((name, i) => ({
    name,
    path: listed ? [...path, i] : path,
    known: Object.keys(catalog[shelf]),
    lacks: `No catalog holds the ${shelves[shelf]}`,
  }));
}
