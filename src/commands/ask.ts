import { hasErrors } from "../diagnostics/print.js";
import type { Diagnostic } from "../diagnostics/diagnostic.js";
import type { Source } from "../model/source.js";
import type { Opened, PlanFile } from "../model/plan-file.js";
import { open, plan, planFrom, readCar, readFile } from "../pipeline.js";
import type { CommonOptions } from "./options.js";

/** A plan with all that was read on the way to it. */
export interface Planned {
  opened?: Opened;
  value?: PlanFile;
  diagnostics: Diagnostic[];
  sources: readonly Source[];
}

/** Plans a job for the car that the options name; a job that ends in `.json` is a plan file. */
export function planned(job: string, options: CommonOptions): Planned {
  const library = open(options.library);
  const opened = library.value;
  const sources = opened?.sources ?? [];
  if (!opened || hasErrors(library.diagnostics))
    return { diagnostics: library.diagnostics, sources };
  if (job.endsWith(".json")) return fromFile(opened, job);
  const car = options.car === undefined ? undefined : readCar(opened, options.car);
  const all = [...sources, ...(car?.sources ?? [])];
  if (car && !car.value) return { diagnostics: car.diagnostics, sources: all };
  const ask = { job, fitted: options.fitted, ...(car?.value ? { car: car.value } : {}) };
  const { value, diagnostics } = plan(opened, ask);
  return { opened, ...(value ? { value } : {}), diagnostics, sources: all };
}

function fromFile(opened: Opened, path: string): Planned {
  const read = readFile(path);
  const sources = [...opened.sources, ...(read.value ? [read.value] : [])];
  const outcome = read.value ? planFrom(opened, read.value) : { diagnostics: read.diagnostics };
  return { opened, ...outcome, sources };
}

/** The options that were taken from the range because nobody gave them, in words. */
export function takenWords({ car }: PlanFile): string {
  const taken = car.taken.map((option) => `${option}=${car.fitted[option] ?? ""}`);
  return taken.length > 0 ? `taken from the range: ${taken.join(", ")}` : "";
}
