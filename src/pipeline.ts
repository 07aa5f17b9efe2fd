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
import type { PlanText } from "./model/generated/plan.js";
import type { FoundFile } from "./model/generated/found.js";
import type { Step } from "./model/plan.js";
import type { Ask, Given, Opened, PlanFile, Resume } from "./model/plan-file.js";
import type { Proof } from "./model/proof.js";
import type { Origin, Source } from "./model/source.js";
import { digestOf } from "./pipeline/digest.js";
import { prove } from "./prove/prove.js";
import { resolve } from "./resolve/resolve.js";
import { restore } from "./resolve/restore.js";
import { validateOne } from "./validate/validate.js";

export { ownLibrary, open, readCar, readFile, readFound, readPack } from "./pipeline/open.js";
export { jsonOf } from "./pipeline/digest.js";
export { isProven, print, sheetNames } from "./pipeline/print.js";
export { difference, differenceWords, jobsOf, recipesFor, smallestCause, why };

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
    ? restore(written.text, written.file, tasks, world, opened.words)
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
