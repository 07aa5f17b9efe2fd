import type { Diagnostic, Outcome } from "../diagnostics/diagnostic.js";
import type { FoundFile } from "../model/generated/found.js";
import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";
import type { Filed, Library } from "../model/library.js";
import type { Brief, Phase, Step } from "../model/plan.js";
import type { Task } from "../model/task.js";
import { effectOf } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import { type Thing, type World, keyOf } from "../model/world.js";
import { briefOf } from "./brief.js";
import { type CarState, carState } from "./car-state.js";
import { type Scope, type Visit, closure } from "./closure.js";
import { type Compiler, compile } from "./compile.js";
import { type Compiled, type CompiledVisit, dutiesOf, isolates } from "./duties.js";
import { type Inserted, foundFixings, insertedSteps } from "./inserted.js";
import { namesOf } from "../model/names.js";
import { ownThings } from "./own-things.js";
import type { RecipeStep } from "../model/recipe-step.js";
import { reverse } from "./reverse.js";
import { rulesOfRange } from "./rules-of-range.js";
import { referTo, thingsOf } from "./things.js";
import { type Fitted, matches } from "./when.js";

/** What a job asks for: a recipe of a range, on a car with these options and found notes. */
export interface Request {
  range: Filed<RangeFile>;
  recipe: Filed<RecipeFile>;
  recipes: readonly Filed<RecipeFile>[];
  catalog: Library["catalog"];
  fitted: Fitted;
  found: NonNullable<import("../model/generated/car.js").CarFile["found"]>;
  words: Words;
  /** What was found and added during the work. */
  during?: Filed<FoundFile> | undefined;
}

/** The world that a plan is held against, and the tasks of which one is made. */
export interface Resolved {
  world: World;
  tasks: Task[];
  brief: Brief;
  inserted: Inserted[];
}

/** Works out everything that must come off for a job, and what the work and its undoing ask for. */
export function resolve(request: Request): Outcome<Resolved> {
  const { range, recipe, fitted, catalog, words } = request;
  const { scope, everyJob } = scopeOf(request);
  const { things, car } = scope;
  const { visits, diagnostics } = closure(scope, [recipe, ...everyJob]);
  const report = (diagnostic: Diagnostic): void => void diagnostics.push(diagnostic);
  const compiler: Compiler = { scope, words, catalog, report };
  const compiled = visits.map((visit) => compileVisit(compiler, visit));
  const world: World = {
    things,
    ...dutiesOf(scope, compiled),
    ...rulesOfRange(range, things, car),
  };
  const steps = compiled.flatMap(({ strip, refit, check, chain }) =>
    [...strip, ...refit, ...check, ...chain].map((item) => item.step),
  );
  const data = { range: range.data, recipe: recipe.data };
  const brief = briefOf({ ...data, catalog, fitted, visits, steps, things, words });
  const tasks = compiled.map((one) => taskOf(one, compiled));
  const phases = new Map(steps.map((step) => [step.id, step.phase]));
  const { during } = request;
  const inserted = during ? insertedSteps(compiler, during, (id) => phases.get(id)) : [];
  return { value: { world, tasks, brief, inserted }, diagnostics: unique(diagnostics) };
}

/** The car of a request, every object that it has, and every name that means something. */
function scopeOf(request: Request): { scope: Scope; everyJob: Filed<RecipeFile>[] } {
  const { range, recipe, recipes, fitted, found } = request;
  const { steering = "" } = range.data;
  const car = carState(fitted, found, fitted[steering]);
  const things = thingsOf(range, car);
  const inRange = recipes.filter((one) => matches(one.data.when, fitted));
  for (const thing of inRange.flatMap((one) => declared(one, things, car, request.catalog)))
    things.set(thing.key, thing);
  for (const thing of request.during ? foundFixings(request.during, range.data) : [])
    things.set(thing.key, thing);
  for (const thing of things.values())
    thing.looksAt = thing.looksAt.flatMap((ref) => referTo(things, ref, thing.position, car));
  const own = [...things.values()].map((thing) => thing.name);
  const names = new Set([...namesOf(range.data), ...own]);
  const everyJob = inRange.filter((one) => one.data["every-job"] === true && one !== recipe);
  return { scope: { recipes, things, names, car }, everyJob };
}

/** A recipe for a part on both sides declares its own things once for each side. */
function declared(
  recipe: Filed<RecipeFile>,
  things: ReadonlyMap<string, Thing>,
  car: CarState,
  { roles }: Library["catalog"],
): Thing[] {
  const part = recipe.data.strips ?? recipe.data.eases;
  const keys = part === undefined ? [] : referTo(things, part, "", car);
  const places = keys.map((key) => things.get(key)?.position ?? "");
  return (places.length > 0 ? places : [""]).flatMap((place) => ownThings(recipe, place, roles));
}

const sectionPhase: Record<string, Phase> = {
  prepare: "prepare",
  strip: "strip",
  refit: "refit",
  check: "refit",
  record: "record",
  work: "repair",
  close: "close",
};

function compileVisit(compiler: Compiler, visit: Visit): CompiledVisit {
  const { data } = visit.recipe;
  const one = (
    section: string,
    raw: RecipeStep,
    path: (string | number)[],
    stage?: string,
  ): Compiled[] => {
    const phase = sectionPhase[section] ?? "repair";
    const step = compile(compiler, { visit, phase, section, path, stage }, raw);
    return step ? [{ step, raw }] : [];
  };
  const list = (section: "prepare" | "strip" | "check" | "record" | "work" | "close"): Compiled[] =>
    (data[section] ?? []).flatMap((step, i, all) =>
      one(
        section,
        step,
        [section, i],
        all.slice(0, i + 1).findLast((before) => before.stage)?.stage,
      ),
    );
  const strip = data.strip ?? [];
  const refit =
    data.refit === undefined || data.refit === "reversed"
      ? reverse(strip).flatMap(({ step, index }) => one("refit", step, ["strip", index]))
      : data.refit.flatMap((step, i) => one("refit", step, ["refit", i]));
  const surplus = refit.flatMap((item) => surplusOf(compiler, visit, item));
  const chain = [...list("prepare"), ...list("record"), ...list("work"), ...list("close")];
  const back = [...refit, ...surplus];
  const compiled = { visit, strip: list("strip"), refit: back, check: list("check"), chain };
  shareMinutes(compiled);
  return compiled;
}

/** Fixings that were too many on this car are left out on purpose, once the range's own number is back. */
function surplusOf(compiler: Compiler, visit: Visit, { step }: Compiled): Compiled[] {
  return step.does.flatMap(({ verb, object, place }) => {
    const fixing = compiler.scope.things.get(keyOf(object, place))?.fixing;
    if (effectOf(verb) !== "in" || !fixing || fixing.extra === 0) return [];
    const raw: RecipeStep = { "leave-out": object, ...(place === "" ? {} : { at: place }) };
    const where = { visit, phase: "refit" as const, section: "refit", path: step.origin.path };
    const left = compile(compiler, where, raw);
    return left ? [{ step: left, raw }] : [];
  });
}

/** Spreads a recipe's hands-on time evenly over those of its steps that have none of their own. */
function shareMinutes({ visit, strip, refit, check, chain }: CompiledVisit): void {
  const total = visit.recipe.data.time;
  const steps = [...strip, ...refit, ...check, ...chain]
    .map((item) => item.step)
    .filter((step) => step.minutes[1] === 0);
  if (total === undefined) return;
  const share = (minutes: number): number => Math.round((minutes / steps.length) * 10) / 10;
  for (const step of steps) step.minutes = [share(total[0]), share(total[1]), share(total[2])];
}

function taskOf(
  { visit, strip, refit, check, chain }: CompiledVisit,
  compiled: readonly CompiledVisit[],
): Task {
  const { data } = visit.recipe;
  const of = (phase: Phase): Step[] =>
    chain.map((item) => item.step).filter((step) => step.phase === phase);
  const absent = [...strip, ...refit].some(({ step }) =>
    step.does.some((change) => change.verb === "fit-new"),
  );
  return {
    id: visit.id,
    title: data.name,
    frames: data["every-job"] === true,
    steps: {
      prepare: of("prepare"),
      strip: absent ? [] : strip.map((item) => item.step),
      record: of("record"),
      repair: of("repair"),
      refit: [...refit, ...check].map((item) => item.step),
      close: of("close"),
    },
    after: visit.after.map((other) => other.id),
    isolates: isolates(visit)
      ? strip.flatMap(({ step }) =>
          effectOf(step.verb) === "isolate" ? step.does.map((c) => c.object) : [],
        )
      : [],
    needsIsolated: visit.needsIsolated,
    waitsFor: refit.flatMap((item) => waitsOf(visit, item, compiled)),
    liveSteps: [...strip, ...refit].flatMap(({ raw, step }) =>
      (raw.needs ?? [])
        .filter((n) => n.endsWith(" live"))
        .map((n) => [step.id, n.split(" ")[0] ?? ""] as const),
    ),
    isolatedSteps: [...strip, ...refit]
      .filter(({ raw }) => raw.needs?.some((need) => need.endsWith(" isolated")))
      .map(({ step }) => step.id),
  };
}

/** The tasks whose parts a refit step wants back, or still off: 'carpet on', 'console-front off'. */
function waitsOf(
  visit: Visit,
  { raw, step }: Compiled,
  compiled: readonly CompiledVisit[],
): NonNullable<Task["waitsFor"]> {
  return (raw.needs ?? []).flatMap((need) => {
    const [name = "", state = ""] = need.split(" ");
    if (!["on", "off"].includes(state)) return [];
    const others = compiled.filter(({ visit: { recipe, position } }) => {
      const { strips, eases } = recipe.data;
      const side = position === visit.position || position === "" || visit.position === "";
      return (strips === name || eases === name) && side;
    });
    return others.map((other) => ({ step: step.id, task: other.visit.id, back: state === "on" }));
  });
}

function unique(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const seen = new Set<string>();
  return diagnostics.filter((d) => {
    const key = `${d.code} ${d.message} ${d.span?.file} ${d.span?.start}`;
    return !seen.has(key) && seen.add(key);
  });
}
