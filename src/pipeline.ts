import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import { arrange } from "./arrange/arrange.js";
import type { Diagnostic, Outcome } from "./diagnostics/diagnostic.js";
import { didYouMean } from "./diagnostics/nearest.js";
import { hasErrors } from "./diagnostics/print.js";
import type { CarFile } from "./model/generated/car.js";
import type { RangeFile } from "./model/generated/range.js";
import type { RecipeFile } from "./model/generated/recipe.js";
import type { Filed, Library } from "./model/library.js";
import type { Brief, Step } from "./model/plan.js";
import type { PlanText } from "./model/generated/plan.js";
import type { Proof } from "./model/proof.js";
import type { Origin, Source } from "./model/source.js";
import type { Words } from "./model/words.js";
import { prove } from "./prove/prove.js";
import { readLibrary, readOne } from "./read/read.js";
import { resolve } from "./resolve/resolve.js";
import { restore } from "./resolve/restore.js";
import { validate, validateOne } from "./validate/validate.js";

/** The library that comes with the package. */
export const ownLibrary = fileURLToPath(new URL("../recipes", import.meta.url));

/** A library with the sources it was read from. */
export interface Opened {
  library: Library;
  sources: readonly Source[];
  words: Words;
}

/** What to plan: a job by name, a car file or options. */
export interface Ask {
  job: string;
  car?: CarFile;
  fitted: Readonly<Record<string, string>>;
}

/** A plan with its proof, as `plan --json` gives it. */
export interface PlanFile {
  job: string;
  range: string;
  car: {
    name: string;
    fitted: Record<string, string>;
    found: NonNullable<CarFile["found"]>;
    taken: string[];
  };
  steps: Step[];
  count: Proof["count"];
  proof: { laws: Proof["laws"] };
  walk: {
    zoneChanges: number;
    toolChanges: number;
    plain: { zoneChanges: number; toolChanges: number };
  };
  hotWork: boolean;
  brief: Brief;
  digest: string;
}

/** A plan that somebody wrote or edited, and the file it stands in. */
export interface Given {
  text: PlanText;
  file: string;
}

/** Proves a plan file against the library it came from; a library that has changed since is an error. */
export function planFrom(opened: Opened, source: Source): Outcome<PlanFile> {
  const { value: text, diagnostics } = validateOne<PlanText>(source, "plan");
  if (!text) return { diagnostics };
  const { job, range, car } = text;
  const ask: Ask = {
    job,
    fitted: car.fitted,
    car: { car: range, range, name: car.name ?? "", found: car.found ?? [] },
  };
  const outcome = plan({ ...opened, sources: [...opened.sources, source] }, ask, {
    text,
    file: source.file,
  });
  if (outcome.value && outcome.value.digest !== text.digest)
    outcome.diagnostics.push(stale(source, outcome.value.digest));
  return outcome;
}

function stale(source: Source, digest: string): Diagnostic {
  return {
    code: "stale-plan",
    message: `The recipes, the car or its options have changed since this plan was written (now ${digest}).`,
    span: source.spanOf(["digest"]),
    hints: ["Plan the job again and make the edits anew."],
    related: [],
  };
}

/** Reads and validates a library: files become typed recipes, ranges and cars. */
export function open(folder: string): Outcome<Opened> {
  const read = readLibrary(folder);
  const sources = read.value ?? [];
  const { value, diagnostics } = validate(sources);
  const words = readOne(fileURLToPath(new URL("../templates/words.en.yaml", import.meta.url))).value
    ?.value as Words;
  const all = [...read.diagnostics, ...diagnostics];
  return value
    ? { value: { library: value, sources, words }, diagnostics: all }
    : { diagnostics: all };
}

/** From an ask to a plan with its proof: resolve, arrange, prove. Steps given are proven as they stand. */
export function plan(opened: Opened, ask: Ask, given?: Given): Outcome<PlanFile> {
  const job = findJob(opened.library, ask);
  if (!job.value) return { diagnostics: job.diagnostics };
  const { range, recipe, recipes } = job.value;
  const options = fittedOf(range.data, { ...ask.car?.fitted, ...ask.fitted });
  if (options.diagnostics.length > 0) return { diagnostics: options.diagnostics };
  const { fitted, taken } = options;
  const found = ask.car?.found ?? [];
  const request = {
    range,
    recipe,
    recipes,
    catalog: opened.library.catalog,
    fitted,
    found,
    words: opened.words,
  };
  const resolved = resolve(request);
  if (!resolved.value || hasErrors(resolved.diagnostics))
    return { diagnostics: resolved.diagnostics };
  const { world, tasks, brief } = resolved.value;
  const derived = arrange(tasks);
  const steps = given ? restore(given.text, given.file, tasks, world) : derived.steps;
  const arranged = { ...derived, steps };
  const proof = prove(world, arranged.steps);
  const car = { name: ask.car?.name ?? ask.car?.car ?? "", fitted, found, taken };
  const closed = recipes.filter((one) =>
    tasks.some((task) => task.id.split("@")[0] === one.data.recipe),
  );
  const value: PlanFile = {
    job: `${range.data.range}/${recipe.data.recipe}`,
    range: range.data.range,
    car,
    steps: arranged.steps,
    count: proof.count,
    proof: { laws: proof.laws },
    walk: { ...arranged.walk, plain: arranged.plain },
    hotWork: world.hotWork,
    brief,
    digest: digestOf([range.data, fitted, found, ...closed.map((one) => one.data)]),
  };
  return { value, diagnostics: [...resolved.diagnostics, ...breaches(opened, proof)] };
}

/** The first eight hexadecimal figures of SHA-256 over a value's JSON. */
export function digestOf(value: unknown): string {
  return createHash("sha256").update(JSON.stringify(value)).digest("hex").slice(0, 8);
}

interface Job {
  range: Filed<RangeFile>;
  recipe: Filed<RecipeFile>;
  recipes: Filed<RecipeFile>[];
}

function findJob(library: Library, { job, car }: Ask): Outcome<Job> {
  const [rangeName, name] = job.includes("/") ? job.split("/") : [car?.range, job];
  const hits = library.ranges
    .filter((range) => rangeName === undefined || range.data.range === rangeName)
    .flatMap((range) => {
      const recipes = recipesFor(library, range);
      const recipe = recipes.find((one) => one.data.recipe === name || one.data.strips === name);
      return recipe ? [{ range, recipe, recipes }] : [];
    });
  const [first, second] = hits;
  if (first && !second) return { value: first, diagnostics: [] };
  const known = library.recipes.map((one) => one.data.recipe);
  const message = second
    ? `'${job}' stands in more than one range.`
    : `There is no job '${job}' in this library.`;
  const hints = second ? ["Write it as range/recipe."] : didYouMean(name ?? "", known);
  return { diagnostics: [{ code: "unknown-name", message, hints, related: [] }] };
}

/** The recipes of a range: those in its folder, and those outside every range's folder. */
export function recipesFor(library: Library, range: Filed<RangeFile>): Filed<RecipeFile>[] {
  const folder = (file: string): string => file.split("/").slice(0, -1).join("/");
  const inside = (one: { folder: string }, of: Filed<RangeFile>): boolean =>
    `${one.folder}/`.startsWith(`${folder(of.source.file)}/`);
  return library.recipes.filter(
    (one) => inside(one, range) || !library.ranges.some((other) => inside(one, other)),
  );
}

function fittedOf(
  range: RangeFile,
  given: Readonly<Record<string, string>>,
): { fitted: Record<string, string>; taken: string[]; diagnostics: Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const bad = (message: string, hints: string[]): void =>
    void diagnostics.push({ code: "bad-option", message, hints, related: [] });
  for (const [option, value] of Object.entries(given)) {
    const known = range.options[option];
    if (!known)
      bad(`This range has no option '${option}'.`, didYouMean(option, Object.keys(range.options)));
    else if (!(value in known.values))
      bad(
        `The option '${option}' has no value '${value}'.`,
        didYouMean(value, Object.keys(known.values)),
      );
  }
  const taken = Object.keys(range.options).filter((option) => !(option in given));
  const defaults = Object.entries(range.options).map(([option, { default: value }]) => [
    option,
    given[option] ?? value,
  ]);
  return { fitted: Object.fromEntries(defaults), taken, diagnostics };
}

function breaches({ sources }: Opened, proof: Proof): Diagnostic[] {
  const spanOf = ({ file, path }: Origin) =>
    sources.find((source) => source.file === file)?.spanOf(path) ?? { file, start: 0, end: 0 };
  return proof.laws.flatMap(({ findings }) =>
    findings.map(({ code, message, step, hints, related }) => ({
      code,
      message: step ? `step ${step.n} (${step.id}): ${message}` : `at the end: ${message}`,
      ...(step
        ? { span: spanOf(step.origin) }
        : related[0]
          ? { span: spanOf(related[0].origin) }
          : {}),
      hints,
      related: related.map((one) => ({ span: spanOf(one.origin), label: one.label })),
    })),
  );
}
