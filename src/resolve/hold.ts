import type { Hold } from "../model/plan.js";
import type { Thing } from "../model/world.js";
import type { Compiler } from "./compile.js";
import type { RecipeStep } from "../model/recipe-step.js";
import { withFigures } from "./sentence.js";

const kinds: Record<string, Hold["kind"]> = {
  hold: "hold",
  witness: "witness",
  decide: "decision",
};

/** What a hold, witness point or decision prints, where the verb is one. */
export function holdOf(
  { words, catalog }: Compiler,
  step: RecipeStep,
  verb: string,
  thing: Thing | undefined,
): Hold | undefined {
  const kind = kinds[verb];
  if (kind === undefined || thing === undefined) return undefined;
  const role = step.role ?? "lead-technician";
  return {
    kind,
    name: thing.words,
    role: catalog.roles[role]?.name ?? role,
    accept: withFigures(words, step, step.accept ?? ""),
    readings: (step.readings ?? []).map((reading) => ({ ...reading })),
    choices: [...(step.choices ?? [])],
  };
}
