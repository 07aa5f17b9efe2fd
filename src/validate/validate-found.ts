import type { Diagnostic, Outcome } from "../diagnostics/diagnostic.js";
import type { FoundFile } from "../model/generated/found.js";
import type { Library } from "../model/library.js";
import type { Placed } from "../model/recipe-steps.js";
import type { Source } from "../model/source.js";
import { lookUp } from "./rule.js";
import { twoMasks } from "./rules/one-mask.js";
import { shopNamesAt } from "./rules/shop-names.js";
import { validateOne } from "./validate.js";

/** Holds a file of what was found against its schema, and what its steps name against the catalogs of a library. */
export function validateFound(source: Source, { catalog }: Library): Outcome<FoundFile> {
  const { value, diagnostics } = validateOne<FoundFile>(source, "found");
  if (!value) return { diagnostics };
  const found: Diagnostic[] = [];
  const report = (one: Diagnostic): void => void found.push(one);
  for (const placed of addedSteps(value)) {
    lookUp(source, shopNamesAt(placed, catalog), report);
    twoMasks(source, placed, catalog, report);
  }
  return { value, diagnostics: found };
}

function addedSteps({ steps = [] }: FoundFile): Placed[] {
  return steps.map(({ do: step }, i) => ({ step, path: ["steps", i, "do"] }));
}
