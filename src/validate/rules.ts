import type { Rule } from "./rule.js";
import { carNames } from "./rules/car-names.js";
import { rangeNames } from "./rules/range-names.js";
import { recipeNames } from "./rules/recipe-names.js";
import { shopNames } from "./rules/shop-names.js";

/** Every rule of a library, in the order in which it speaks. */
export const rules: readonly Rule[] = [rangeNames, shopNames, recipeNames, carNames];
