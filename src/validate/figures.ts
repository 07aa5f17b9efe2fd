import type { Figure, RecipeFile } from "../model/generated/recipe.js";
import type { Library } from "../model/library.js";
import type { Path, Source } from "../model/source.js";
import { fixingsOf } from "./inventory.js";
import { type Placed, stepsOf } from "../model/recipe-steps.js";

/** A figure of the library and where it stands. */
export interface PlacedFigure {
  figure: Figure;
  source: Source;
  path: Path;
}

/** Every figure that the ranges and recipes of a library write. */
export function figuresOf({ ranges, recipes }: Library): PlacedFigure[] {
  const torques = ranges.flatMap(({ data, source }) =>
    fixingsOf(data).flatMap(({ value: { torque }, path }) =>
      torque ? [{ figure: torque, source, path: [...path, "torque"] }] : [],
    ),
  );
  const watches = ranges.flatMap(({ data, source }) => {
    const figure = data["hot-work"]?.watch;
    return figure ? [{ figure, source, path: ["hot-work", "watch"] }] : [];
  });
  return [...torques, ...watches, ...recipes.flatMap(({ data, source }) => ofRecipe(data, source))];
}

function ofRecipe(recipe: RecipeFile, source: Source): PlacedFigure[] {
  return stepsOf(recipe).flatMap((placed) =>
    ofStep(placed).map(([figure, path]) => ({ figure, source, path })),
  );
}

function ofStep({ step, path }: Placed): [Figure, Path][] {
  const { figures = {}, wait, readings = [], facts = [] } = step;
  const listed = (key: string, items: readonly { figure?: Figure }[]): [Figure, Path][] =>
    items.flatMap(({ figure }, i): [Figure, Path][] =>
      figure ? [[figure, [...path, key, i, "figure"]]] : [],
    );
  return [
    ...Object.entries(figures).map(([name, one]): [Figure, Path] => [
      one,
      [...path, "figures", name],
    ]),
    ...(wait ? [[wait, [...path, "wait"]] satisfies [Figure, Path]] : []),
    ...listed("readings", readings),
    ...listed("facts", facts),
  ];
}
