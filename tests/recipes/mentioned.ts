import type { RangeFile } from "../../src/model/generated/range.js";
import type { RecipeFile } from "../../src/model/generated/recipe.js";

const sections = ["prepare", "strip", "refit", "check", "record", "work", "close"] as const;

/** Every recipe that a job can bring in on any car of the range. */
function reach(recipes: readonly RecipeFile[], root: RecipeFile): RecipeFile[] {
  const found = new Set([root, ...recipes.filter((one) => one["every-job"])]);
  for (const recipe of found) {
    const off = [...(recipe["needs-off"] ?? []), ...(recipe["needs-eased"] ?? [])];
    const parts = off.map((wanted) => (typeof wanted === "string" ? wanted : wanted.part));
    const supplies = recipe["needs-isolated"] ?? [];
    for (const one of recipes) {
      const part = one.strips ?? one.eases;
      const isolates = (one.strip ?? []).some((step) =>
        [step.isolate ?? step.drain ?? []].flat().some((supply) => supplies.includes(supply)),
      );
      if ((part !== undefined && parts.includes(part)) || isolates) found.add(one);
    }
  }
  return [...found];
}

/** The options whose value can change a job's plan, by the texts of the range and of all recipes it can bring in. */
export function mentioned(
  range: RangeFile,
  recipes: readonly RecipeFile[],
  root: RecipeFile,
): string[] {
  const names = new Set<string>();
  const say = (when: object | undefined): void =>
    Object.keys(when ?? {}).forEach((n) => names.add(n));
  const sided = (at: string | string[] | undefined): void => {
    const driver = [at].flat().some((place) => place === "driver" || place === "passenger");
    if (driver && range.steering !== undefined) names.add(range.steering);
  };
  for (const recipe of reach(recipes, root)) {
    say(recipe.when);
    const part = range.parts[recipe.strips ?? recipe.eases ?? ""];
    const holding = [part?.["held-by"], part?.plugs, part?.hooks].flatMap((map) =>
      Object.values(map ?? {}),
    );
    const steps = sections.flatMap((key) => (Array.isArray(recipe[key]) ? recipe[key] : []));
    const wanted = [...(recipe["needs-off"] ?? []), ...(recipe["needs-eased"] ?? [])];
    const asked = wanted.map((one) => {
      const { part: name, ...rest } = typeof one === "string" ? { part: one } : one;
      return [range.parts[name], rest] as const;
    });
    for (const one of [part, ...holding, ...steps, ...asked.flat()]) {
      say(one && "when" in one ? one.when : undefined);
      sided(one && "at" in one ? one.at : undefined);
    }
  }
  return [...names];
}

/** Every way in which these options can be fitted together. */
export function combinations(
  range: RangeFile,
  options: readonly string[],
): Record<string, string>[] {
  return options.reduce<Record<string, string>[]>(
    (list, option) =>
      list.flatMap((one) =>
        Object.keys(range.options[option]?.values ?? {}).map((value) => ({
          ...one,
          [option]: value,
        })),
      ),
    [{}],
  );
}
