import { arrange } from "../../src/arrange/arrange.js";
import { findJob } from "../../src/find/find-job.js";
import { fittedOf } from "../../src/find/fitted.js";
import type { Ask, Opened, PlanFile } from "../../src/index.js";
import type { Task } from "../../src/model/task.js";
import { prove } from "../../src/prove/prove.js";
import { resolve } from "../../src/resolve/resolve.js";

type Steps = PlanFile["steps"];

/** A job laid out for many trials: its tasks, its steps, and what the prover says of other steps. */
export interface Bench {
  steps: Steps;
  tasks: Task[];
  /** The options this car has, and where the steering wheel is. */
  fitted: Record<string, string>;
  codes(steps: Steps): string[];
}

/** The stages behind the command, without reading the same files for every trial; `judged` takes the public way. */
export function benchOf({ library, words }: Opened, ask: Ask): Bench {
  const job = findJob(library, ask.job, ask.car?.range, {}).value;
  if (!job) throw new Error(`no job ${ask.job}`);
  const { fitted } = fittedOf(job.range.data, { ...ask.car?.fitted, ...ask.fitted });
  const found = ask.car?.found ?? [];
  const { value } = resolve({ ...job, catalog: library.catalog, fitted, found, words });
  if (!value) throw new Error(`${ask.job} does not resolve`);
  const { world, tasks } = value;
  const codes = (steps: Steps): string[] =>
    prove(world, steps).laws.flatMap((law) => law.findings.map((finding) => finding.code));
  return { steps: arrange(tasks).steps, tasks, fitted, codes };
}
