import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { hasErrors } from "../diagnostics/print.js";
import type { Opened } from "../model/plan-file.js";
import { open, planFrom, readFile, readPack } from "../pipeline.js";
import { everyJob } from "./every-job.js";
import { type CommonOptions, knownCode } from "./options.js";
import { asJson, progressBar, report, say, sayJson, textsOf } from "./report.js";

/** `countback check [PATH…]`: proves plan files, printed sheets, or every job of the library. */
export async function checkCommand(
  paths: readonly string[],
  options: CommonOptions & { strict?: boolean },
): Promise<number> {
  const library = open(options.library, "en", knownCode(options.code));
  const opened = library.value;
  const files = await Promise.all(paths.map(readPlan));
  const sources = [
    ...(opened?.sources ?? []),
    ...files.flatMap(({ value }) => (value ? [value] : [])),
  ];
  const good = opened && !hasErrors(library.diagnostics);
  const found = !good
    ? []
    : paths.length > 0
      ? provePlans(opened, files)
      : proveAll(opened, options);
  const diagnostics = [...library.diagnostics, ...found];
  const textOf = textsOf(sources);
  if (options.json) sayJson(asJson(diagnostics, textOf));
  return report(options.json ? [] : diagnostics, textOf, options) || exitOf(diagnostics, options);
}

function exitOf(diagnostics: readonly Diagnostic[], { strict = false }): number {
  return hasErrors(diagnostics) || (strict && diagnostics.length > 0) ? 1 : 0;
}

/** A plan file, or the plan that a printed sheet carries. */
async function readPlan(path: string): Promise<ReturnType<typeof readFile>> {
  return path.endsWith(".pdf") ? readPack(path) : readFile(path);
}

function proveAll(opened: Opened, options: CommonOptions): Diagnostic[] {
  const { diagnostics, jobs, plans, left } = everyJob(opened, progressBar(options));
  const rest = left > 0 ? `; ${left} more sets of options were not` : "";
  say(`${jobs} jobs proven on ${plans} cars and sets of options${rest}`, options);
  return diagnostics;
}

function provePlans(opened: Opened, files: readonly ReturnType<typeof readFile>[]): Diagnostic[] {
  return files.flatMap(({ value, diagnostics }) =>
    value ? planFrom(opened, value).diagnostics : diagnostics,
  );
}
