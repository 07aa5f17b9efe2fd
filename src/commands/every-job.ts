import type { Diagnostic } from "../diagnostics/diagnostic.js";
import type { CarFile } from "../model/generated/car.js";
import type { JobOptions, Opened } from "../model/plan-file.js";
import { jobsOf, plan, smallestCause } from "../pipeline.js";

/** What a proof of a whole library has done. */
export interface Checked {
  diagnostics: Diagnostic[];
  jobs: number;
  plans: number;
  /** Combinations of options that were not proven, because there are too many. */
  left: number;
}

type Found = { diagnostic: Diagnostic; failing: Record<string, string>[] };

/** Proves every job of a library for every combination of the options that matter to it, and for every car. */
export function everyJob(opened: Opened, progress: (done: number, all: number) => void): Checked {
  const jobs = jobsOf(opened.library);
  const all = jobs.reduce((sum, job) => sum + job.sets.length + job.cars.length, 0);
  let [plans, left] = [0, 0];
  const found = new Map<string, Diagnostic>();
  for (const job of jobs) {
    for (const diagnostic of onOptions(opened, job)) join(found, diagnostic);
    for (const diagnostic of onCars(opened, job)) join(found, diagnostic, false);
    plans += job.sets.length + job.cars.length;
    left += job.left;
    progress(plans, all);
  }
  return { diagnostics: [...found.values()], jobs: jobs.length, plans, left };
}

/** The same finding in several jobs is told once, with a hint for each job; one on a car only where it is new. */
function join(found: Map<string, Diagnostic>, diagnostic: Diagnostic, again = true): void {
  const key = keyOf(diagnostic);
  const before = found.get(key);
  if (!before) found.set(key, diagnostic);
  else if (again)
    found.set(key, { ...before, hints: [...new Set([...before.hints, ...diagnostic.hints])] });
}

/** The same finding at the same place, whatever its step's number. */
function keyOf({ code, message, span }: Diagnostic): string {
  return [code, message.replace(/^step \S+ /, ""), span?.file, span?.start].join(" ");
}

function onOptions(opened: Opened, { job, sets }: JobOptions): Diagnostic[] {
  const found = new Map<string, Found>();
  for (const fitted of sets) {
    for (const diagnostic of plan(opened, { job, fitted }).diagnostics) {
      const known = found.get(keyOf(diagnostic)) ?? { diagnostic, failing: [] };
      if (!known.failing.includes(fitted)) known.failing.push(fitted);
      found.set(keyOf(diagnostic), known);
    }
  }
  return [...found.values()].map(({ diagnostic, failing }) => {
    const cause = Object.entries(smallestCause(failing, sets));
    const where = cause.map(([option, value]) => `${option}=${value}`).join(", ");
    const words = cause.length === 0 ? "on every car" : `on every car with ${where}`;
    return { ...diagnostic, hints: [...diagnostic.hints, `Job ${job}: ${words}.`] };
  });
}

function onCars(opened: Opened, { job, cars }: JobOptions): Diagnostic[] {
  return cars.flatMap((car: CarFile) =>
    plan(opened, { job, car, fitted: {} }).diagnostics.map((diagnostic) => ({
      ...diagnostic,
      hints: [...diagnostic.hints, `Job ${job}: on the car '${car.car}'.`],
    })),
  );
}
