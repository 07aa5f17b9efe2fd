import type { Diagnostic, Outcome } from "../diagnostics/diagnostic.js";
import type { CarFile } from "../model/generated/car.js";
import type { Library } from "../model/library.js";
import type { Source } from "../model/source.js";
import { carCounts } from "./rules/car-counts.js";
import { carNames } from "./rules/car-names.js";
import { options } from "./rules/options.js";
import { validateOne } from "./validate.js";

/** Holds one car file against its schema, and what it names against the ranges of a library. */
export function validateCar(source: Source, { ranges, catalog }: Library): Outcome<CarFile> {
  const { value, diagnostics } = validateOne<CarFile>(source, "car");
  if (!value) return { diagnostics };
  const alone: Library = {
    ranges,
    recipes: [],
    cars: [{ data: value, source }],
    catalogs: [],
    catalog,
  };
  const found: Diagnostic[] = [];
  for (const rule of [carNames, options, carCounts]) rule.run(alone, (one) => found.push(one));
  return { value, diagnostics: found };
}
