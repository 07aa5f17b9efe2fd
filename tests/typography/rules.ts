import { fieldRules } from "./rules/fields.js";
import { flowRules } from "./rules/flow.js";
import { placeRules } from "./rules/place.js";
import { typeRules } from "./rules/type.js";
import type { Rule } from "./sheet.js";

/** Every rule of layout that is measured on the printed PDF. */
export const rules: readonly Rule[] = [...typeRules, ...fieldRules, ...placeRules, ...flowRules];
