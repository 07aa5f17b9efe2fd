import type { FoundFile } from "../model/generated/found.js";
import type { RangeFile } from "../model/generated/range.js";
import type { Filed } from "../model/library.js";
import type { Phase, Step } from "../model/plan.js";
import type { Thing } from "../model/world.js";
import type { Visit } from "./closure.js";
import { type Compiler, compile } from "./compile.js";
import { blankThing, fixingFacts } from "./things.js";

/** A step that was added during the work, and the step after which it stands. */
export interface Inserted {
  after: string;
  step: Step;
  index: number;
}

/** Fixings that were found during the work and that the range does not know. */
export function foundFixings({ data, source }: Filed<FoundFile>, range: RangeFile): Thing[] {
  return Object.entries(data.fixings ?? {}).map(([name, { kind, count, where, zone = "" }]) => {
    const known = range.kinds[kind];
    const words = known?.name ?? kind;
    const origin = { file: source.file, path: ["fixings", name] };
    const thing = blankThing({ is: "fixing", name, words, position: "", zone, origin });
    const here = { present: count, extra: 0, sound: count };
    thing.fixing = fixingFacts({ kind, count, where }, known, count, here, undefined);
    return thing;
  });
}

/** Compiles the steps that were added, each in the phase of the step after which it stands. */
export function insertedSteps(
  compiler: Compiler,
  { data, source }: Filed<FoundFile>,
  phaseOf: (id: string) => Phase | undefined,
): Inserted[] {
  const name = compiler.words.phrases["added"] ?? "Added";
  const recipe = { data: { recipe: "added", name }, source };
  const visit: Visit = { id: "added", recipe, position: "", after: [], needsIsolated: [] };
  return (data.steps ?? []).flatMap(({ after, do: raw }, index) => {
    const phase = phaseOf(after) ?? "repair";
    const place = { visit, phase, section: "steps", path: ["steps", index, "do"] };
    const step = compile(compiler, place, raw);
    return step ? [{ after, step: { ...step, id: `added.${index + 1}` }, index }] : [];
  });
}
