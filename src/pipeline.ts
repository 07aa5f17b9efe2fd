import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { arrange } from "./arrange/arrange.js";
import { type Insertion, insert } from "./arrange/insert.js";
import type { Diagnostic, Outcome } from "./diagnostics/diagnostic.js";
import { hasErrors } from "./diagnostics/print.js";
import { findJob, recipesFor } from "./find/find-job.js";
import { difference, differenceWords } from "./explain/difference.js";
import { why } from "./explain/why.js";
import { smallestCause } from "./find/combinations.js";
import { fittedOf } from "./find/fitted.js";
import { jobsOf } from "./find/jobs.js";
import { fill } from "./fill/fill.js";
import { page } from "./fill/page.js";
import type { SheetInput } from "./fill/sheet.js";
import { sheets } from "./fill/sheets.js";
import { fontFile } from "./layout/fonts.js";
import { layout } from "./layout/layout.js";
import type { CarFile } from "./model/generated/car.js";
import type { PlanText } from "./model/generated/plan.js";
import type { FoundFile } from "./model/generated/found.js";
import type { Filed } from "./model/library.js";
import type { Step } from "./model/plan.js";
import type { Ask, Given, Opened, PlanFile, Resume } from "./model/plan-file.js";
import type { PrintOptions, Printed } from "./model/printing.js";
import type { Proof } from "./model/proof.js";
import type { Origin, Source } from "./model/source.js";
import type { Words } from "./model/words.js";
import { paint } from "./paint/paint.js";
import { prove } from "./prove/prove.js";
import { rate } from "./rate/rate.js";
import { readLibrary, readOne } from "./read/read.js";
import { resolve } from "./resolve/resolve.js";
import { restore } from "./resolve/restore.js";
import { validateCar } from "./validate/validate-car.js";
import { validate, validateOne } from "./validate/validate.js";

export { difference, differenceWords, jobsOf, recipesFor, smallestCause, why };

/** The library that comes with the package. */
export const ownLibrary = fileURLToPath(new URL("../recipes", import.meta.url));

/** Proves a plan file against the library it came from; a library that has changed since is an error. */
export function planFrom(opened: Opened, source: Source): Outcome<PlanFile> {
  const { value: text, diagnostics } = validateOne<PlanText>(source, "plan");
  if (!text) return { diagnostics };
  const { job, range, car } = text;
  const ask: Ask = {
    job,
    fitted: car.fitted,
    car: { car: car.id ?? "", range, name: car.name ?? "", found: car.found ?? [] },
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
  const { value, diagnostics } = validate(sources, !hasErrors(read.diagnostics));
  const words = readOne(fileURLToPath(new URL("../templates/words.en.yaml", import.meta.url))).value
    ?.value as Words;
  const all = [...read.diagnostics, ...diagnostics];
  return value
    ? { value: { library: value, sources, words }, diagnostics: all }
    : { diagnostics: all };
}

/** Reads a car file and holds it against the ranges of a library. */
export function readCar(opened: Opened, path: string): Outcome<CarFile> & { sources: Source[] } {
  const read = readOne(path);
  if (!read.value) return { diagnostics: read.diagnostics, sources: [] };
  const { value, diagnostics } = validateCar(read.value, opened.library);
  return { ...(value ? { value } : {}), diagnostics, sources: [read.value] };
}

/** Reads a file of what was found and added during the work. */
export function readFound(path: string): Outcome<Filed<FoundFile>> & { sources: Source[] } {
  const { value: source, diagnostics } = readOne(path);
  if (!source) return { diagnostics, sources: [] };
  const found = validateOne<FoundFile>(source, "found");
  const value = found.value && { value: { data: found.value, source } };
  return { ...value, diagnostics: found.diagnostics, sources: [source] };
}

/** Reads one file with the positions of its values. */
export const readFile = readOne;

/** From an ask to a plan with its proof: resolve, arrange, prove. Steps given are proven as they stand. */
export function plan(opened: Opened, ask: Ask, written?: Given): Outcome<PlanFile> {
  const given = { ...ask.car?.fitted, ...ask.fitted };
  const job = findJob(opened.library, ask.job, ask.car?.range, given);
  if (!job.value) return { diagnostics: job.diagnostics };
  const { range, recipe, recipes } = job.value;
  const options = fittedOf(range.data, given);
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
    during: ask.during,
  };
  const resolved = resolve(request);
  if (!resolved.value || hasErrors(resolved.diagnostics))
    return { diagnostics: resolved.diagnostics };
  const { world, tasks, brief } = resolved.value;
  const arranged = arrange(tasks);
  const added: Diagnostic[] = [];
  const steps = written
    ? restore(written.text, written.file, tasks, world)
    : withInserted(arranged.steps, resolved.value.inserted, ask.during, added);
  if (added.length > 0) return { diagnostics: added };
  const proof = prove(world, steps);
  const { car: id = "", name = id } = ask.car ?? {};
  const car = { id, name, fitted, found, taken };
  const closed = recipes.filter((one) =>
    tasks.some((task) => task.id.split("@")[0] === one.data.recipe),
  );
  const value: PlanFile = {
    job: `${range.data.range}/${recipe.data.recipe}`,
    range: range.data.range,
    car,
    steps,
    count: proof.count,
    proof: { laws: proof.laws },
    walk: { ...arranged.walk, plain: arranged.plain },
    brief,
    digest: digestOf([range.data, fitted, found, ...closed.map((one) => one.data)]),
    ...(ask.during ? { resume: resumeOf(ask.during.data) } : {}),
  };
  return { value, diagnostics: [...resolved.diagnostics, ...breaches(opened, proof)] };
}

function withInserted(
  steps: readonly Step[],
  inserted: readonly Insertion[],
  during: Ask["during"],
  found: Diagnostic[],
): Step[] {
  if (!during) return [...steps];
  return insert(steps, inserted, during.data.reached, (code, message, path, hints) => {
    found.push({ code, message, span: during.source.spanOf(path), hints, related: [] });
  });
}

function resumeOf({ replaces, reached, readings = [], decisions = [] }: FoundFile): Resume {
  return { replaces, reached, readings: [...readings], decisions: [...decisions] };
}

/** Prints a plan's sheets; one that does not prove prints as a draft only. */
export async function print(
  opened: Opened,
  file: PlanFile,
  options: PrintOptions,
): Promise<Outcome<Printed[]>> {
  const input = inputOf(file, options);
  const wanted = sheets.filter(
    (sheet) => (options.sheets?.includes(sheet.name) ?? true) && sheet.applies(input),
  );
  const css = styleText();
  const printed: Printed[] = [];
  for (const sheet of wanted) {
    const html = fill(sheet, input, opened.words);
    const name = [file.car.id, file.job.split("/").at(-1), sheet.name].filter(Boolean).join("-");
    if (options.html) {
      const bytes = Buffer.from(page(html, css.text, file.brief.title));
      printed.push({ name: `${name}.html`, bytes });
      continue;
    }
    const laid = layout(html, css, options.paper);
    if (!laid.value || hasErrors(laid.diagnostics)) return { diagnostics: laid.diagnostics };
    const bytes = await paint(laid.value, { revision: input.revision, fontFile });
    printed.push({ name: `${name}.pdf`, bytes });
  }
  return { value: printed, diagnostics: [] };
}

/** The names of all sheets. */
export const sheetNames: readonly string[] = sheets.map((sheet) => sheet.name);

function inputOf(file: PlanFile, { draft, large }: PrintOptions): SheetInput {
  const { steps, count, brief, car } = file;
  const revision = digestOf([file.job, car, steps, count]);
  return {
    steps,
    count,
    brief,
    car,
    revision: `${revision.slice(0, 4)} ${revision.slice(4)}`,
    findings: file.proof.laws.flatMap((law) => law.findings),
    ratings: rate(steps),
    draft: draft || !isProven(file),
    large,
    ...(file.resume ? { resume: file.resume } : {}),
  };
}

/** Whether every law holds. */
export function isProven({ proof }: PlanFile): boolean {
  return proof.laws.every(({ held }) => held);
}

function styleText(): { text: string; file: string } {
  const file = fileURLToPath(new URL("../templates/sheet.css", import.meta.url));
  return { text: readFileSync(file, "utf8"), file };
}

/** The first eight hexadecimal figures of SHA-256 over a value's JSON. */
export function digestOf(value: unknown): string {
  return createHash("sha256").update(JSON.stringify(value)).digest("hex").slice(0, 8);
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
