import { lineColumn } from "../diagnostics/print.js";
import { hasErrors } from "../diagnostics/print.js";
import type { PlanFile } from "../model/plan-file.js";
import type { Origin, Source } from "../model/source.js";
import { difference, differenceWords, jsonOf, why } from "../pipeline.js";
import { type Planned, planned, takenWords } from "./ask.js";
import type { CommonOptions } from "./options.js";
import { report, say, sayJson, textsOf } from "./report.js";

/** What `plan` takes beside the common options. */
export interface PlanOptions extends CommonOptions {
  why?: string;
  against?: string;
}

/** `countback plan JOB`: prints a proven plan, why a step is in it, or what differs from another. */
export function planCommand(job: string, options: PlanOptions): number {
  const one = planned(job, options);
  const { value, diagnostics, sources } = one;
  const textOf = textsOf(sources);
  if (value && options.why !== undefined) return whyCommand(value, options.why, one, options);
  if (value && options.against !== undefined)
    return againstCommand(job, one, options.against, options);
  if (value) sayLines(options.json ? [jsonOf(value)] : value.steps.map(stepLine));
  const taken = value ? takenWords(value) : "";
  if (taken !== "") say(taken, options);
  return report(diagnostics, textOf, options);
}

function stepLine({ n, phase, says }: PlanFile["steps"][number]): string {
  return `${n.padStart(5)}  ${phase.padEnd(7)}  ${says}`;
}

function sayLines(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

function whyCommand(
  plan: PlanFile,
  name: string,
  { diagnostics, sources }: Planned,
  options: PlanOptions,
): number {
  const { value, diagnostics: own } = why(plan, name, (origin) => placeOf(sources, origin));
  if (value && options.json) sayJson(value);
  else if (value) sayLines(value);
  return report([...diagnostics, ...own], textsOf(sources), options);
}

function placeOf(sources: readonly Source[], { file, path }: Origin): string {
  const source = sources.find((one) => one.file === file);
  if (!source) return file;
  const { line, column } = lineColumn(source.text, source.spanOf(path).start);
  return `${file}:${line}:${column}`;
}

/** The other plan is a plan file, a car file, or options written as `option=value,option=value`. */
function againstCommand(job: string, one: Planned, against: string, options: PlanOptions): number {
  const other = otherPlan(job, against, options);
  const textOf = textsOf([...one.sources, ...other.sources]);
  const found = [...one.diagnostics, ...other.diagnostics];
  if (!one.value || !other.value) return report(found, textOf, options);
  const differs = difference(one.value, other.value);
  if (options.json) sayJson(differs);
  else
    sayLines(
      differenceWords(differs, one.value.car.name || "this plan", other.value.car.name || against),
    );
  return hasErrors(found) ? report(found, textOf, options) : 0;
}

function otherPlan(job: string, against: string, options: PlanOptions): Planned {
  if (against.endsWith(".json")) return planned(against, options);
  const { car: _, ...rest } = options;
  if (!against.includes("=")) return planned(job, { ...rest, car: against });
  const pairs = against.split(",").map((pair) => pair.split("="));
  const fitted = { ...options.fitted, ...Object.fromEntries(pairs) };
  return planned(job, { ...options, fitted });
}
