import { hasErrors } from "../diagnostics/print.js";
import type { Diagnostic } from "../diagnostics/diagnostic.js";
import type { Source } from "../model/source.js";
import type { Opened, PlanFile } from "../model/plan-file.js";
import { open, plan, planFrom, readCar, readFile, readFound } from "../pipeline.js";
import { type CommonOptions, knownCode } from "./options.js";

/** A plan with all that was read on the way to it. */
export interface Planned {
  opened?: Opened;
  value?: PlanFile;
  diagnostics: Diagnostic[];
  sources: readonly Source[];
}

/** Plans a job for the car that the options name; a job that ends in `.json` is a plan file. */
export function planned(job: string, options: CommonOptions): Planned {
  const { value: opened, diagnostics } = open(
    options.library,
    options.language,
    knownCode(options.code),
  );
  const sources = opened?.sources ?? [];
  if (!opened || hasErrors(diagnostics)) return { diagnostics, sources };
  return job.endsWith(".json") ? fromFile(opened, job) : fromOptions(opened, job, options);
}

function fromOptions(opened: Opened, job: string, options: CommonOptions): Planned {
  const car = options.car === undefined ? none : readCar(opened, options.car);
  const during = options.found === undefined ? none : readFound(opened, options.found);
  const sources = [...opened.sources, ...car.sources, ...during.sources];
  const bad = [...car.diagnostics, ...during.diagnostics];
  if (hasErrors(bad)) return { diagnostics: bad, sources };
  const { value, diagnostics } = plan(opened, {
    job,
    fitted: options.fitted,
    ...(car.value ? { car: car.value } : {}),
    ...(during.value ? { during: during.value } : {}),
  });
  return { opened, ...(value ? { value } : {}), diagnostics: [...bad, ...diagnostics], sources };
}

const none = { value: undefined, diagnostics: [], sources: [] };

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
