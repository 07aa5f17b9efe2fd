import type { RangeFile } from "../../src/model/generated/range.js";
import type { RecipeFile } from "../../src/model/generated/recipe.js";
import type { Step } from "../../src/model/plan.js";
import { type RecipeStep, targetsOf, verbOf } from "../../src/model/recipe-step.js";
import type { Change } from "../../src/model/world.js";

const chain = ["prepare", "record", "work", "close"] as const;
const off = new Set(["lift-out", "put-in", "cut-out", "fit-new"]);
const out = new Set(["fold-back", "lay-back", "ease", "settle", "tie-aside", "free"]);
const release = new Set(["hold", "witness", "decide"]);

/** Where a part is meant: not on the other side; seen from no side, wherever it stands. */
function meantPlaces(here: string[], own: string[]): string[] | undefined {
  if (own.some((one) => here.includes(one))) return here;
  return own.length === 0 || here.includes("") ? own : undefined;
}

/** The positions that an `at` means on this car. */
type Sides = Record<string, string[]>;

/** What the recipes write of the order of their own steps. */
export interface Written {
  recipeOf(step: Step): RecipeFile | undefined;
  /** Whether a change takes off, or puts back, what a step's recipe needs off or eased. */
  isOffFor(step: Step, change: Change): boolean;
  needsOf(step: Step): readonly string[];
  /** Why two steps of one list may not change places: neighbours of a chain, or a hold and what stands behind it. */
  chained(a: Step, b: Step): string | undefined;
}

/** Reads the recipes that a car with these options uses. */
export function writtenOf(
  range: RangeFile,
  recipes: readonly RecipeFile[],
  fitted: Record<string, string>,
): Written {
  const fits = (when: Record<string, string | string[]> | undefined): boolean =>
    Object.keys(when ?? {}).every((option) =>
      new Set([when?.[option]].flat()).has(fitted[option] ?? ""),
    );
  const used = recipes.filter((recipe) => fits(recipe.when));
  const named = new Map(used.map((recipe) => [recipe.recipe, recipe]));
  const driver = fitted[range.steering ?? ""] ?? "left";
  const passenger = driver === "left" ? "right" : "left";
  const sides: Sides = {
    both: ["left", "right"],
    driver: [driver],
    passenger: [passenger],
  };
  const lists = used.flatMap((recipe) =>
    [recipe.check ?? [], chain.flatMap((section) => recipe[section] ?? [])].map((list) => ({
      recipe,
      list: list.filter((raw) => fits(raw.when)),
    })),
  );
  const recipeOf = (step: Step): RecipeFile | undefined => named.get(step.task);
  const isOffFor = (step: Step, change: Change): boolean =>
    (["needs-off", "needs-eased"] as const).some((key) =>
      (recipeOf(step)?.[key] ?? []).some((wanted) => {
        const { part, at, when } =
          typeof wanted === "string" ? { part: wanted, at: "", when: {} } : wanted;
        const here = at ? (sides[at] ?? [at]) : [step.position];
        const own = [range.parts[part]?.at ?? []].flat().flatMap((one) => sides[one] ?? [one]);
        const place = meantPlaces(here, own);
        return (
          place !== undefined &&
          part === change.object &&
          fits(when) &&
          (off.has(change.verb) || (key === "needs-eased" && out.has(change.verb))) &&
          (place.length === 0 || place.includes(change.place))
        );
      }),
    );
  return {
    recipeOf,
    isOffFor,
    needsOf: (step) => rawOf(recipeOf(step), step)?.needs ?? [],
    chained: (a, b) => chainedIn(sides, lists, a, b) ?? firstCheck(recipeOf(b), a, b),
  };
}

function rawOf(recipe: RecipeFile | undefined, step: Step): RecipeStep | undefined {
  const [section, i] = step.origin.path;
  const list = recipe?.[section as "strip" | "work" | "check"];
  return Array.isArray(list) ? list[Number(i)] : undefined;
}

/** Whether a step is the one that a recipe writes here, or one that stands for it (a test done once for two). */
function stands(step: Step, raw: RecipeStep, sides: Sides): boolean {
  const names = new Set(targetsOf(raw).map((name) => name.split("@")[0]));
  const places = [raw.at ?? []].flat().flatMap((at) => sides[at] ?? [at]);
  return (
    step.verb === verbOf(raw) &&
    step.does.some(
      ({ object, round, place }) =>
        names.has(object) &&
        round === raw.round &&
        (raw.at === undefined || places.includes(place)),
    )
  );
}

function chainedIn(
  sides: Sides,
  lists: readonly { recipe: RecipeFile; list: RecipeStep[] }[],
  a: Step,
  b: Step,
): string | undefined {
  for (const { recipe, list } of lists) {
    if (recipe.recipe === a.task && recipe.recipe === b.task && a.position !== b.position) continue;
    if (recipe.recipe !== a.task && recipe.recipe !== b.task) continue;
    const [i, k] = [
      list.findIndex((raw) => stands(a, raw, sides)),
      list.findIndex((raw) => stands(b, raw, sides)),
    ];
    const [first, then] = [list[i], list[k]];
    if (first === undefined || then === undefined || i >= k) continue;
    if (release.has(verbOf(first) ?? "")) return "hold and what stands behind it";
    if (k === i + 1 && then.needs === undefined) return "chain";
  }
  return undefined;
}

/** The first check of a recipe comes after all of its refit. */
function firstCheck(recipe: RecipeFile | undefined, a: Step, b: Step): string | undefined {
  const [section, i] = b.origin.path;
  const same = a.task === b.task && a.position === b.position;
  const refit = a.phase === "refit" && a.origin.path[0] !== "check";
  return recipe && same && refit && section === "check" && i === 0 ? "refit and check" : undefined;
}
