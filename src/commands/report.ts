import { readFileSync } from "node:fs";
import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { type TextOf, format, hasErrors, severityOf, toJson } from "../diagnostics/print.js";
import type { Source } from "../model/source.js";

/** The texts of files, from the sources read or from the disk. */
export function textsOf(sources: readonly Source[]): TextOf {
  const known = new Map(sources.map((source) => [source.file, source.text]));
  return (file) => known.get(file) ?? textFrom(file);
}

function textFrom(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return undefined;
  }
}

/** Prints diagnostics on stderr and gives the exit code: 1 with errors, or with warnings where they count. */
export function report(
  diagnostics: readonly Diagnostic[],
  textOf: TextOf,
  { quiet = false, strict = false } = {},
): number {
  for (const diagnostic of diagnostics)
    if (!quiet || severityOf(diagnostic) === "error")
      process.stderr.write(`${format(diagnostic, textOf)}\n`);
  return hasErrors(diagnostics) || (strict && diagnostics.length > 0) ? 1 : 0;
}

/** Prints a value as JSON on stdout. */
export function sayJson(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}

/** Diagnostics as `check --json` gives them. */
export function asJson(diagnostics: readonly Diagnostic[], textOf: TextOf): object[] {
  return diagnostics.map((diagnostic) => toJson(diagnostic, textOf));
}

/** Says something to whoever sits at the terminal, unless told to be quiet. */
export function say(text: string, { quiet = false } = {}): void {
  if (!quiet) process.stderr.write(`${text}\n`);
}

/** A progress bar on a terminal; elsewhere nothing. */
export function progressBar({ quiet = false }): (done: number, all: number) => void {
  if (quiet || !process.stderr.isTTY) return () => undefined;
  return (done, all) => {
    const full = Math.round((30 * done) / Math.max(1, all));
    const bar = `${"=".repeat(full)}${" ".repeat(30 - full)}`;
    process.stderr.write(`\r[${bar}] ${done}/${all}${done === all ? "\n" : ""}`);
  };
}
