import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import { markOf, textOf } from "../figures/format.js";
import { spanOf } from "../figures/minutes.js";
import { inInches } from "../figures/in-units.js";
import type { Catalog } from "../model/library.js";
import type { Phase, Step } from "../model/plan.js";
import type { Path } from "../model/source.js";
import { effectOf, verbs } from "../model/verbs.js";
import { messageOf } from "../model/wear.js";
import type { Words } from "../model/words.js";
import type { Change, Thing } from "../model/world.js";
import { changeTo } from "./changes.js";
import { fixingsOf } from "./step-fixings.js";
import type { Scope, Visit } from "./closure.js";
import { holdOf } from "./hold.js";
import { type RecipeStep, targetsOf, verbsOf } from "../model/recipe-step.js";
import { sentence, withFigures } from "./sentence.js";
import { againOf, idOf } from "./step-id.js";
import { referTo } from "./things.js";
import { matches } from "./when.js";

/** What the compiling of steps needs besides the step. */
export interface Compiler {
  scope: Scope;
  words: Words;
  catalog: Catalog;
  report: (diagnostic: Diagnostic) => void;
}

/** Where a step stands. */
export interface Place {
  visit: Visit;
  phase: Phase;
  section: string;
  path: Path;
  /** The heading of this part of the recipe, where it has one. */
  stage?: string | undefined;
}

/** Turns one step of a recipe into a step of the plan, or nothing where this car has nothing to do. */
export function compile(compiler: Compiler, place: Place, step: RecipeStep): Step | undefined {
  const { scope } = compiler;
  if (!matches(step.when, scope.car.fitted)) return undefined;
  const [verb, second] = verbsOf(step);
  if (verb === undefined || second !== undefined) return oneVerb(compiler, place, verb, second);
  const things = targetsOf(step).flatMap((name) => targets(compiler, place, step, verb, name));
  const pairs = things.flatMap((thing) => {
    const change = changeTo(verb, step, thing);
    return change ? [{ thing, change }] : [];
  });
  if (pairs.length === 0) return undefined;
  const does = pairs.map((pair) => pair.change);
  return assemble(
    compiler,
    place,
    step,
    does[0]?.verb ?? verb,
    pairs.map((pair) => pair.thing),
    does,
  );
}

function oneVerb(
  compiler: Compiler,
  place: Place,
  verb: string | undefined,
  second: string | undefined,
): undefined {
  const { source } = place.visit.recipe;
  const message =
    verb === undefined
      ? "This step has no verb."
      : `This step has two verbs: '${verb}' and '${second}'.`;
  compiler.report({
    code: "one-verb",
    message,
    span: source.spanOf(place.path),
    hints: ["A step holds one verb and what it acts on."],
    related: [],
  });
  return undefined;
}

function targets(
  compiler: Compiler,
  place: Place,
  step: RecipeStep,
  verb: string,
  name: string,
): Thing[] {
  const { scope } = compiler;
  const { visit } = place;
  const span = visit.recipe.source.spanOf(place.path);
  if (!scope.names.has(name.split("@")[0] ?? "")) {
    compiler.report({
      code: "unknown-name",
      message: `Nothing in this range or recipe is called '${name}'.`,
      span,
      hints: didYouMean(name, scope.names),
      related: [],
    });
    return [];
  }
  const things = thingsAt(scope, visit, step, name);
  const wrong = things.find((thing) => !verbs[verb]?.on.includes(thing.is));
  if (wrong)
    compiler.report({
      code: "wrong-object",
      message: `'${verb}' cannot act on the ${wrong.is} '${name}'.`,
      span,
      hints: [`It acts on: ${verbs[verb]?.on.join(", ")}.`],
      related: [],
    });
  checkCount(compiler, step, things, span);
  return wrong ? [] : things;
}

function thingsAt(scope: Scope, visit: Visit, step: RecipeStep, name: string): Thing[] {
  const positions = step.at === undefined ? [visit.position] : scope.car.positions(step.at);
  const keys = positions.flatMap((position) => referTo(scope.things, name, position, scope.car));
  return [...new Set(keys)].flatMap((key) => scope.things.get(key) ?? []);
}

function checkCount(
  compiler: Compiler,
  step: RecipeStep,
  things: readonly Thing[],
  span: Diagnostic["span"],
): void {
  for (const thing of things) {
    const full = thing.fixing?.full ?? thing.welds;
    if (full === undefined || step.count === undefined || step.count === full) continue;
    compiler.report({
      code: "count-mismatch",
      message: `The recipe counts ${step.count} of '${thing.key}', the range ${full}.`,
      ...(span ? { span } : {}),
      hints: ["Count on the car and mend whichever is wrong."],
      related: [],
    });
  }
}

/** The tools that a fixing asks for on this way; another kind that was found there comes out by its own. */
function toolsOf(verb: string, { fixing }: Thing): readonly string[] {
  const effect = effectOf(verb);
  const own = effect === "in" ? fixing?.toolsIn : undefined;
  const found = effect === "out" ? fixing?.instead?.tool : undefined;
  return own ?? [found ?? fixing?.tool ?? []].flat();
}

const lifting = new Set(["off", "on", "cut-off", "fit-new", "try-in", "take-out"]);

/** Lifting a part takes as many people as the range says; all else takes one, unless the step says otherwise. */
function peopleOf(step: RecipeStep, verb: string, part: Thing | undefined): number {
  const lift = lifting.has(effectOf(verb) ?? "") ? part?.people : undefined;
  return step.people ?? lift ?? 1;
}

/** Doing up what holds a critical part is critical itself. */
function criticalOf(
  { things }: Scope,
  step: RecipeStep,
  verb: string,
  first: Thing | undefined,
): string | undefined {
  const host = effectOf(verb) === "in" ? things.get(first?.host ?? "") : undefined;
  return step.critical ?? host?.critical;
}

function assemble(
  compiler: Compiler,
  place: Place,
  step: RecipeStep,
  verb: string,
  things: Thing[],
  does: Change[],
): Step {
  const { scope } = compiler;
  const { visit, phase } = place;
  const { data, source } = visit.recipe;
  const part = things.find((thing) => thing.is === "part");
  const hold = holdOf(compiler, step, verb, things[0]);
  const critical = criticalOf(scope, step, verb, things[0]);
  return {
    n: "",
    id: idOf(place, step, verb, does),
    phase,
    task: data.recipe,
    title: place.stage ?? data.name,
    position: visit.position,
    verb,
    ...(part ? { part: part.name } : {}),
    hides: part?.hides ?? [],
    touches: things.flatMap(({ key, host }) => [key, ...(host === undefined ? [] : [host])]),
    fixings: fixingsOf(does, scope.things),
    says: sentence(compiler.words, step, verb, does, things),
    does,
    tools: [...new Set(step.tools ?? things.flatMap((thing) => toolsOf(verb, thing)))],
    ...(hold ? { hold } : {}),
    ...printed(compiler, step),
    again: againOf(place, step),
    found: foundNotes(compiler, does, things),
    ...(critical === undefined ? {} : { critical }),
    people: peopleOf(step, verb, part),
    minutes: step.time ? [...step.time] : [0, 0, 0],
    zone: things[0]?.zone || data.repairs || "",
    origin: { file: source.file, path: place.path },
  };
}

type Printed = Pick<
  Step,
  | "uses"
  | "messages"
  | "note"
  | "figures"
  | "facts"
  | "readings"
  | "checks"
  | "night"
  | "count"
  | "wait"
  | "waitMinutes"
  | "waitSource"
>;

function printed(compiler: Compiler, step: RecipeStep): Printed {
  const { words } = compiler;
  const figures = Object.values(step.figures ?? {});
  return {
    uses: (step.uses ?? []).map(({ amount, ...use }) => ({
      ...use,
      ...(typeof amount === "number" ? { amount } : {}),
    })),
    messages: (step.warn ?? []).flatMap((warn) => messageOf(compiler.catalog, warn)),
    ...(step.note === undefined ? {} : { note: withFigures(words, step, step.note) }),
    figures: figures.map((figure) => {
      const { source } = figure;
      const text = textOf(figure, words);
      const inch = textOf(inInches(figure, words), words);
      return { kind: figure.kind, text, inch, mark: markOf(source), source };
    }),
    facts: (step.facts ?? []).map((fact) => ({ ...fact })),
    readings: (step.readings ?? []).map((reading) => ({ ...reading })),
    checks: (step.checks ?? []).map((check) => withFigures(words, step, check)),
    night: step.night ?? false,
    ...countOf(step),
    ...waitOf(step.wait, words),
  };
}

function countOf({ count: expect, of, positions }: RecipeStep): Pick<Step, "count"> {
  return expect === undefined || of === undefined
    ? {}
    : { count: { expect, of, positions: [...(positions ?? [])] } };
}

function waitOf(
  wait: RecipeStep["wait"],
  words: Words,
): Pick<Step, "wait" | "waitMinutes" | "waitSource"> {
  const waitMinutes = spanOf(wait);
  return {
    wait: wait ? textOf(wait, words) : "",
    ...(waitMinutes ? { waitMinutes } : {}),
    ...(wait ? { waitSource: wait.source } : {}),
  };
}

function foundNotes(
  compiler: Compiler,
  does: readonly Change[],
  things: readonly Thing[],
): string[] {
  const names = new Set([
    ...does.map((change) => change.object),
    ...things.flatMap((thing) => thing.host?.split("@")[0] ?? []),
  ]);
  const { car } = compiler.scope;
  return car.found
    .filter(
      (note) =>
        names.has(note.fixing ?? note.part ?? "") || note.awkward?.some((part) => names.has(part)),
    )
    .filter((note) => things.some((thing) => car.here(note, thing.position)))
    .map((note) => note.note);
}
