import type { CarFile } from "./generated/car.js";
import type { CatalogFile } from "./generated/catalog.js";
import type { RangeFile } from "./generated/range.js";
import type { RecipeFile } from "./generated/recipe.js";
import type { Source } from "./source.js";

/** A file that has passed its schema, with the source it was read from. */
export interface Filed<T> {
  data: T;
  source: Source;
}

/** All that a library folder holds, each file of the form its schema asks for. */
export interface Library {
  ranges: Filed<RangeFile>[];
  /** `folder` says for which range: the one whose file lies in it or above it; else every range. */
  recipes: (Filed<RecipeFile> & { folder: string })[];
  cars: Filed<CarFile>[];
  catalogs: Filed<CatalogFile>[];
  /** What the catalogs hold, joined. */
  catalog: Catalog;
}

/** The catalogs of a library, joined. */
export type Catalog = Required<Omit<CatalogFile, "catalog" | "words">>;

/** A tool as its catalog says it. */
export type Tool = Catalog["tools"][string];

/** What one thing of each shelf of a catalog is called. */
export const shelves: Readonly<Record<keyof Catalog, string>> = {
  tools: "tool",
  consumables: "consumable",
  roles: "role",
  wear: "thing to wear",
  messages: "message",
};

/** The shelves of a catalog. */
export const shelfNames = Object.keys(shelves) as (keyof Catalog)[];

/** The ranges that a recipe is for: those in whose folder it lies, or all where it lies in none. */
export function rangesOf(library: Library, recipe: { folder: string }): Filed<RangeFile>[] {
  const inside = library.ranges.filter((range) => liesIn(recipe, range));
  return inside.length > 0 ? inside : library.ranges;
}

/** Whether a recipe lies in the folder of a range, at any depth. */
export function liesIn(recipe: { folder: string }, range: Filed<RangeFile>): boolean {
  const folder = range.source.file.split("/").slice(0, -1).join("/");
  return `${recipe.folder}/`.startsWith(`${folder}/`);
}
