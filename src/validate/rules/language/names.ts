import type { CatalogFile } from "../../../model/generated/catalog.js";
import type { RangeFile } from "../../../model/generated/range.js";
import type { RecipeFile } from "../../../model/generated/recipe.js";
import type { Library } from "../../../model/library.js";
import type { Path, Source } from "../../../model/source.js";

/** A name that a library gives to a thing, where it stands, and whether the thing is a part, a fixing or a tool. */
export interface Named {
  name: string;
  of: "part" | "fixing" | "tool" | "other";
  source: Source;
  path: Path;
}

type Placed = Omit<Named, "source">;
type Names = Readonly<Record<string, { name: string }>> | undefined;

/** Every name that a library gives: to parts, fixings, joins, surfaces, joints, functions, tools, supplies, clothes and things. */
export function namesIn({ ranges, recipes, catalogs }: Library): Named[] {
  return [
    ...ranges.flatMap(({ data, source }) => inRange(data).map((one) => ({ ...one, source }))),
    ...recipes.flatMap(({ data, source }) => inRecipe(data).map((one) => ({ ...one, source }))),
    ...catalogs.flatMap(({ data, source }) => inCatalog(data).map((one) => ({ ...one, source }))),
  ];
}

function inRange(range: RangeFile): Placed[] {
  return [
    ...named("part", range.parts, "parts"),
    ...named("fixing", range.kinds, "kinds"),
    ...named("other", range.supplies, "supplies"),
    ...named("other", range.surfaces, "surfaces"),
    ...named("other", range.joints, "joints"),
    ...named("other", range.functions, "functions"),
    ...Object.entries(range.parts).flatMap(([part, { plugs, hooks }]) => [
      ...named("other", plugs, "parts", part, "plugs"),
      ...named("other", hooks, "parts", part, "hooks"),
    ]),
  ];
}

function inRecipe({ things = {}, spares = [], renew = [] }: RecipeFile): Placed[] {
  return [
    ...Object.entries(things).map(([key, name]) => other(name, "things", key)),
    ...spares.map(({ name }, i) => other(name, "spares", i, "name")),
    ...renew.map(({ name }, i) => other(name, "renew", i, "name")),
  ];
}

function inCatalog({ tools = {}, consumables, roles, wear }: CatalogFile): Placed[] {
  return [
    ...named("tool", tools, "tools"),
    ...Object.entries(tools).flatMap(([key, { instead }]) =>
      instead === undefined ? [] : [other(instead, "tools", key, "instead")],
    ),
    ...named("other", consumables, "consumables"),
    ...named("other", roles, "roles"),
    ...named("other", wear, "wear"),
  ];
}

function named(of: Named["of"], names: Names, ...path: Path): Placed[] {
  return Object.entries(names ?? {}).map(([key, { name }]) => ({
    of,
    name,
    path: [...path, key, "name"],
  }));
}

function other(name: string, ...path: Path): Placed {
  return { of: "other", name, path };
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Words that join the things of a name: 'plug of the belt switch'. */
const joins = set(
  "of for with without to and or in on at as from by under over below above along beside behind between through round across near per the a an each every both all its",
);

/** Words of place and state that stand before a thing and name none. */
export const adjectives = set(
  "left right front rear upper lower inner outer top bottom middle centre first second new old used spare loose bare clean",
);

const numbers = set("one two three four five six");

/** The runs of words in a name with nothing between them, without the adjectives that open each, and up to a clause. */
export function runsIn(name: string): string[][] {
  const [thing = ""] = name.split(/ (?:who|that|which|where) /);
  const words = thing.match(/[\p{L}\d'’×-]+|[^\s\p{L}\d]/gu) ?? [];
  return words
    .map((word) => (/^[^\p{L}]|\d/u.test(word) || joins.has(word.toLowerCase()) ? "|" : word))
    .join(" ")
    .split("|")
    .map((run) => withoutAdjectives(run.split(" ").filter((word) => word !== "")))
    .filter((run) => run.length > 0);
}

function withoutAdjectives(words: readonly string[]): string[] {
  const noun = words.findIndex((word) => !numbers.has(word) && !adjectives.has(word.toLowerCase()));
  return noun < 0 ? [] : words.slice(noun);
}
