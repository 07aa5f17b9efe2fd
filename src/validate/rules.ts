import type { Rule } from "./rule.js";
import { bareFigure } from "./rules/bare-figure.js";
import { blanks } from "./rules/blanks.js";
import { carCounts } from "./rules/car-counts.js";
import { carNames } from "./rules/car-names.js";
import { implausible } from "./rules/implausible.js";
import { options } from "./rules/options.js";
import { rangeNames } from "./rules/range-names.js";
import { recipeNames } from "./rules/recipe-names.js";
import { releases } from "./rules/releases.js";
import { safetyNames } from "./rules/safety-names.js";
import { shopNames } from "./rules/shop-names.js";
import { twice } from "./rules/twice.js";

/** Every rule of a library, in the order in which it speaks. */
export const rules: readonly Rule[] = [
  twice,
  rangeNames,
  safetyNames,
  recipeNames,
  shopNames,
  carNames,
  carCounts,
  options,
  releases,
  implausible,
  bareFigure,
  blanks,
];
