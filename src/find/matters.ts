import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";

type When = Record<string, string | string[]> | undefined;

/** The options of a range that can change a job: those that its closure mentions, whatever the car. */
export function optionsThatMatter(
  range: RangeFile,
  recipes: readonly RecipeFile[],
  job: RecipeFile,
): string[] {
  const reached = closureOf(recipes, [job, ...recipes.filter((one) => one["every-job"])]);
  const names = new Set(reached.flatMap((one) => [one.strips, one.eases]));
  const parts = Object.entries(range.parts).filter(([name]) => names.has(name));
  const held = parts.flatMap(([, part]) => [
    part.when,
    ...[part["held-by"], part.plugs, part.hooks].flatMap((map) =>
      Object.values(map ?? {}).map((one) => one.when),
    ),
  ]);
  const mentioned = new Set([...reached.flatMap(conditionsOf), ...held].flatMap(optionsOf));
  if (range.steering !== undefined && leans(reached, parts)) mentioned.add(range.steering);
  return Object.keys(range.options).filter((option) => mentioned.has(option));
}

function optionsOf(when: When): string[] {
  return Object.keys(when ?? {});
}

/** Every recipe that any car could need for these. */
function closureOf(recipes: readonly RecipeFile[], roots: readonly RecipeFile[]): RecipeFile[] {
  const reached = new Set(roots);
  for (const recipe of reached) {
    const parts = neededParts(recipe);
    const supplies = recipe["needs-isolated"] ?? [];
    for (const other of recipes) {
      const named = parts.has(other.strips ?? "") || parts.has(other.eases ?? "");
      const isolates = (other.strip ?? []).some((step) =>
        [step.isolate ?? step.drain ?? []].flat().some((name) => supplies.includes(name)),
      );
      if (named || isolates) reached.add(other);
    }
  }
  return [...reached];
}

function neededParts(recipe: RecipeFile): Set<string> {
  const needs = [...(recipe["needs-off"] ?? []), ...(recipe["needs-eased"] ?? [])];
  const names = needs.map((need) => (typeof need === "string" ? need : need.part));
  return new Set(names.map((name) => name.split("@")[0] ?? ""));
}

function stepsOf(recipe: RecipeFile) {
  const { prepare, strip, refit, check, record, work, close } = recipe;
  const lists = [prepare, strip, refit, check, record, work, close];
  return lists.flatMap((list) => (Array.isArray(list) ? list : []));
}

function conditionsOf(recipe: RecipeFile): When[] {
  const needs = [...(recipe["needs-off"] ?? []), ...(recipe["needs-eased"] ?? [])];
  return [
    recipe.when,
    ...needs.map((need) => (typeof need === "string" ? undefined : need.when)),
    ...stepsOf(recipe).map((step) => step.when),
  ];
}

/** Whether anything here lies on the driver's or the passenger's side. */
function leans(
  recipes: readonly RecipeFile[],
  parts: [string, RangeFile["parts"][string]][],
): boolean {
  const places = [
    ...parts.flatMap(([, part]) => part.at ?? []),
    ...recipes.flatMap((one) => [
      ...stepsOf(one).map((step) => step.at),
      ...[...(one["needs-off"] ?? []), ...(one["needs-eased"] ?? [])].map((need) =>
        typeof need === "string" ? need.split("@")[1] : (need.at ?? need.part.split("@")[1]),
      ),
    ]),
  ].flat();
  return places.some((place) => place === "driver" || place === "passenger");
}
