import type { Catalog } from "../../model/library.js";
import type { RecipeStep } from "../../model/recipe-step.js";
import { type Placed, stepsOf } from "../../model/recipe-steps.js";
import type { Source } from "../../model/source.js";
import { type Wear, leastOf, messageOf } from "../../model/wear.js";
import type { Report, Rule } from "../rule.js";

/** Nobody can wear two breathing masks: what a step asks for the lungs is one thing that does all the work. */
export const oneMask: Rule = {
  whole: true,
  run: ({ recipes, catalog }, report) => {
    for (const { data, source } of recipes)
      for (const placed of stepsOf(data)) twoMasks(source, placed, catalog, report);
  },
};

/** Reports a step that asks for two things for the lungs of which neither serves for the other. */
export function twoMasks(
  source: Source,
  { step, path }: Placed,
  catalog: Catalog,
  report: Report,
): void {
  const masks = masksAt(step, catalog);
  if (masks.length < 2) return;
  const names = masks.map(({ name }) => `'${name}'`).join(" and ");
  report({
    code: "two-masks",
    message: `This step asks for ${masks.length} things for the lungs at once: ${names}.`,
    span: source.spanOf([...path, "warn"]),
    hints: ["Write one message that names the mask that does the work of both."],
    related: [],
  });
}

function masksAt({ warn = [] }: RecipeStep, catalog: Catalog): Wear[] {
  const asked = warn.flatMap((one) => messageOf(catalog, one)).flatMap(({ wear = [] }) => wear);
  return leastOf(asked).filter(({ id, also }) =>
    [id, ...also].some((one) => catalog.wear[one]?.for === "lungs"),
  );
}
