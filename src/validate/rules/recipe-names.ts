import type { RecipeFile } from "../../model/generated/recipe.js";
import type { Library } from "../../model/library.js";
import { type RecipeStep, targetsOf, verbOf } from "../../model/recipe-step.js";
import type { Path } from "../../model/source.js";
import { position, stateNeed, target } from "../references.js";
import { type Reference, type Report, type Rule, lookUp } from "../rule.js";
import { type Known, isForRange, knownTo } from "../scope.js";
import { type Placed, stepsOf } from "../../model/recipe-steps.js";

/** A recipe names only what its range, it itself or a fellow recipe declares. */
export const recipeNames: Rule = {
  whole: true,
  run: (library, report) => {
    for (const recipe of library.recipes) {
      if (library.ranges.length === 0 && isForRange(recipe)) noRange(recipe, report);
      if (library.ranges.length === 0) continue;
      const known = knownTo(library, recipe);
      const placed = stepsOf(recipe.data);
      const steps = placed.flatMap(({ step, path }) => ofStep(known, step, path));
      const references = [...ofRecipe(known, recipe.data), ...steps, ...doneAgain(placed)];
      lookUp(recipe.source, references, report);
    }
  },
};

/** What a pause point asks for again is a step above it. */
function doneAgain(placed: readonly Placed[]): Reference[] {
  const ids = placed.map(({ step }) => step.id ?? "");
  return placed.flatMap(({ step, path }, at) =>
    (step.again ?? []).map((name, i) => ({
      name,
      path: [...path, "again", i],
      known: ids.slice(0, at).filter((id) => id !== ""),
      lacks: "This recipe has, above the pause point, no step with the id",
    })),
  );
}

function noRange({ source, data }: Library["recipes"][number], report: Report): void {
  report({
    code: "unknown-name",
    message: `The recipe '${data.recipe}' is for a range that isn't there: no file here starts with 'range'.`,
    span: source.spanOf(["recipe"]),
    hints: ["Put the recipe in the folder of its range, or write the range file."],
    related: [],
  });
}

function ofRecipe(known: Known, recipe: RecipeFile): Reference[] {
  const one = (key: "strips" | "eases", name: string | undefined): Reference[] =>
    name === undefined
      ? []
      : [{ name, path: [key], known: known.parts, lacks: `${known.lacks} part` }];
  const zone: Reference[] =
    recipe.repairs === undefined
      ? []
      : [
          {
            name: recipe.repairs,
            path: ["repairs"],
            known: known.zones,
            lacks: `${known.lacks} zone`,
          },
        ];
  const supplies = (recipe["needs-isolated"] ?? []).map((name, i) => ({
    name,
    path: ["needs-isolated", i],
    known: known.supplies,
    lacks: `${known.lacks} supply`,
  }));
  const needed = (["needs-off", "needs-eased"] as const).flatMap((key) =>
    (recipe[key] ?? []).flatMap((need, i) => ofNeed(known, need, [key, i])),
  );
  return [
    ...one("strips", recipe.strips),
    ...one("eases", recipe.eases),
    ...zone,
    ...supplies,
  ].concat(needed);
}

type Need = NonNullable<RecipeFile["needs-off"]>[number];

function ofNeed(known: Known, need: Need, path: Path): Reference[] {
  if (typeof need === "string") return target(known, need, path, known.parts);
  return [
    ...target(known, need.part, [...path, "part"], known.parts),
    ...position(known, need.at, [...path, "at"]),
  ];
}

function ofStep(known: Known, step: RecipeStep, path: Path): Reference[] {
  const verb = verbOf(step) ?? "";
  const single = !Array.isArray(step[verb as "undo"]);
  const targets = verb === "wait" ? [] : targetsOf(step);
  return [
    ...targets.flatMap((name, i) => target(known, name, [...path, verb, ...(single ? [] : [i])])),
    ...position(known, step.at, [...path, "at"]),
    ...(step["looks-at"] ?? []).flatMap((name, i) => target(known, name, [...path, "looks-at", i])),
    ...(step.needs ?? []).flatMap((text, i) => stateNeed(known, text, [...path, "needs", i])),
  ];
}
