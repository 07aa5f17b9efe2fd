import { didYouMean } from "../../diagnostics/nearest.js";
import type { CarFile } from "../../model/generated/car.js";
import type { RangeFile } from "../../model/generated/range.js";
import type { RecipeFile } from "../../model/generated/recipe.js";
import { type Filed, rangesOf } from "../../model/library.js";
import type { Path, Source } from "../../model/source.js";
import { entries, fixingsOf, joinsOf } from "../inventory.js";
import type { Report, Rule } from "../rule.js";
import { stepsOf } from "../../model/recipe-steps.js";

type When = NonNullable<RecipeFile["when"]>;
type Options = RangeFile["options"];

/** A condition asks for an option and a value that the range has, and a car is fitted with such. */
export const options: Rule = {
  whole: true,
  run: (library, report) => {
    for (const { data, source } of library.ranges)
      for (const { when, path } of ofRange(data)) judge(source, when, path, [data.options], report);
    for (const recipe of library.recipes) {
      const known = rangesOf(library, recipe).map((range) => range.data.options);
      if (known.length === 0) continue;
      for (const { when, path } of ofRecipe(recipe.data))
        judge(recipe.source, when, path, known, report);
    }
    for (const car of library.cars) judgeCar(car, library.ranges, report);
  },
};

interface Condition {
  when: When;
  path: Path;
}

function ofRange(range: RangeFile): Condition[] {
  const held = [
    ...entries(range.parts, ["parts"]),
    ...fixingsOf(range),
    ...joinsOf(range),
    ...entries(range.functions, ["functions"]),
  ];
  return held.flatMap(({ value, path }) => condition(value.when, path));
}

function ofRecipe(recipe: RecipeFile): Condition[] {
  const needs = (["needs-off", "needs-eased"] as const).flatMap((key) =>
    (recipe[key] ?? []).flatMap((need, i) =>
      typeof need === "string" ? [] : condition(need.when, [key, i]),
    ),
  );
  const steps = stepsOf(recipe).flatMap(({ step, path }) => condition(step.when, path));
  return [...condition(recipe.when, []), ...needs, ...steps];
}

function condition(when: When | undefined, path: Path): Condition[] {
  return when === undefined ? [] : [{ when, path: [...path, "when"] }];
}

function judgeCar(
  { data, source }: Filed<CarFile>,
  ranges: readonly Filed<RangeFile>[],
  report: Report,
): void {
  const range = ranges.find((one) => one.data.range === data.range);
  if (range) judge(source, data.fitted ?? {}, ["fitted"], [range.data.options], report);
}

function judge(source: Source, when: When, path: Path, known: Options[], report: Report): void {
  const maps = known.flatMap((one) => Object.entries(one));
  for (const [option, wanted] of Object.entries(when)) {
    const values = maps.filter(([name]) => name === option).map(([, one]) => one.values);
    const here = [...path, option];
    const tell = (message: string, span: ReturnType<Source["spanOf"]>, hints: string[]): void =>
      report({ code: "unknown-option", message, span, hints, related: [] });
    if (values.length === 0) {
      const hints = didYouMean(option, new Set(maps.map(([name]) => name)));
      tell(`This range has no option '${option}'.`, source.keySpanOf(here), hints);
      continue;
    }
    const names = new Set(values.flatMap((map) => Object.keys(map)));
    for (const [i, value] of [wanted].flat().entries()) {
      if (names.has(value)) continue;
      const span = source.spanOf(Array.isArray(wanted) ? [...here, i] : here);
      tell(`The option '${option}' has no value '${value}'.`, span, didYouMean(value, names));
    }
  }
}
