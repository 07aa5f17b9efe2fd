import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";
import { type Filed, type Library, liesIn, rangesOf } from "../model/library.js";
import { namesOf } from "../model/names.js";
import { targetsOf, verbOf } from "../model/recipe-step.js";
import { stateWords, verbs } from "../model/verbs.js";
import { positionsOf } from "./inventory.js";
import { stepsOf } from "../model/recipe-steps.js";

/** What the recipes of some ranges may name. */
export interface Known {
  parts: string[];
  zones: string[];
  supplies: string[];
  /** Everything of the range, and what the recipes for it declare. */
  all: string[];
  positions: string[];
  states: string[];
  /** How a message starts that says what is missing. */
  lacks: string;
}

type FiledRecipe = Library["recipes"][number];

/** What a recipe may name: the names of its ranges and of the recipes that share one of them. */
export function knownTo(library: Library, recipe: FiledRecipe): Known {
  const ranges = rangesOf(library, recipe);
  const own = ranges.some((range) => liesIn(recipe, range));
  const known = knownIn(library, ranges);
  const all = [...known.all, ...declaredBy(recipe.data)];
  return { ...known, all, lacks: own ? known.lacks : "No range here has a" };
}

/** What ranges and the recipes for them declare. */
export function knownIn(library: Library, filed: readonly Filed<RangeFile>[]): Known {
  const ranges = filed.map((range) => range.data);
  const fellows = library.recipes
    .filter((other) => rangesOf(library, other).some((range) => filed.includes(range)))
    .map((other) => other.data);
  const keys = (pick: (range: RangeFile) => object | undefined): string[] =>
    ranges.flatMap((range) => Object.keys(pick(range) ?? {}));
  return {
    parts: keys((range) => range.parts),
    zones: keys((range) => range.zones),
    supplies: keys((range) => range.supplies),
    all: [...ranges.flatMap(namesOf), ...fellows.flatMap(declaredBy)],
    positions: ranges.flatMap(positionsOf),
    states: statesOf(fellows),
    lacks: "This range has no",
  };
}

/** Whether a recipe speaks of a car at all, and so must be for some range. */
export function isForRange({ data }: Filed<RecipeFile>): boolean {
  return (data.strips ?? data.eases ?? data.repairs) !== undefined;
}

const declaring = ["hold", "witness", "decide", "pause"];

/** The objects that a recipe declares: its things, and its holds and pauses by their use. */
export function declaredBy(recipe: RecipeFile): string[] {
  const used = stepsOf(recipe)
    .filter(({ step }) => declaring.includes(verbOf(step) ?? ""))
    .flatMap(({ step }) => targetsOf(step));
  return [...Object.keys(recipe.things ?? {}), ...used];
}

function statesOf(recipes: readonly RecipeFile[]): string[] {
  const given = Object.values(verbs).flatMap((verb) => verb.gives ?? []);
  const settings = recipes.flatMap((recipe) =>
    stepsOf(recipe).flatMap(({ step }) => (verbOf(step) === "move" ? (step.to ?? []) : [])),
  );
  return [...new Set([...stateWords, ...given, ...settings])];
}
