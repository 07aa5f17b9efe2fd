import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { hasErrors } from "../diagnostics/print.js";
import { type Opened, everyJob, open, planFrom, readFile } from "../pipeline.js";
import type { CommonOptions } from "./options.js";
import { asJson, report, sayJson, textsOf } from "./report.js";

/** `countback check [PATH…]`: proves plan files, or every job of the library. */
export function checkCommand(
  paths: readonly string[],
  options: CommonOptions & { strict?: boolean },
): number {
  const library = open(options.library);
  const opened = library.value;
  const files = paths.map(readFile);
  const sources = [
    ...(opened?.sources ?? []),
    ...files.flatMap(({ value }) => (value ? [value] : [])),
  ];
  const good = opened && !hasErrors(library.diagnostics);
  const found: Diagnostic[] = !good
    ? []
    : paths.length > 0
      ? provePlans(opened, files)
      : everyJob(opened);
  const diagnostics = [...library.diagnostics, ...found];
  const textOf = textsOf(sources);
  if (options.json) sayJson(asJson(diagnostics, textOf));
  return report(options.json ? [] : diagnostics, textOf, options) || exitOf(diagnostics, options);
}

function exitOf(diagnostics: readonly Diagnostic[], { strict = false }): number {
  return hasErrors(diagnostics) || (strict && diagnostics.length > 0) ? 1 : 0;
}

function provePlans(opened: Opened, files: readonly ReturnType<typeof readFile>[]): Diagnostic[] {
  return files.flatMap(({ value, diagnostics }) =>
    value ? planFrom(opened, value).diagnostics : diagnostics,
  );
}
