#!/usr/bin/env node
import { readFileSync } from "node:fs";
import { Command, CommanderError } from "commander";
import type { Diagnostic } from "./diagnostics/diagnostic.js";
import { format, hasErrors, toJson } from "./diagnostics/print.js";
import type { CarFile } from "./model/generated/car.js";
import { type Opened, open, ownLibrary, plan, planFrom, recipesFor } from "./pipeline.js";
import { UnreadablePath, readOne } from "./read/read.js";

interface Options {
  car?: string;
  fitted: Record<string, string>;
  library: string;
  json?: boolean;
  quiet?: boolean;
}

class WrongUse extends Error {}

function program(): Command {
  const root = new Command("countback").description(
    "Proven, printed sheets for strip, repair and refit jobs.",
  );
  root.exitOverride();
  common(root.command("plan <job>").description("resolve, arrange and prove a job")).action(
    (job: string, options: Options) => {
      process.exitCode = planCommand(job, options);
    },
  );
  common(
    root.command("check [paths...]").description("prove plan files, or the whole library"),
  ).action((paths: string[], options: Options) => {
    process.exitCode = checkCommand(paths, options);
  });
  return root;
}

function common(command: Command): Command {
  const fitted = (text: string, before: Record<string, string>): Record<string, string> => {
    const [option, value, more] = text.split("=");
    if (!option || !value || more !== undefined)
      throw new WrongUse(`--fitted takes option=value, not '${text}'`);
    return { ...before, [option]: value };
  };
  return command
    .option("--car <file>", "car file")
    .option("--fitted <option=value>", "an option of the car; may be repeated", fitted, {})
    .option("--library <dir>", "folder of recipes", ownLibrary)
    .option("--json", "print JSON")
    .option("--quiet", "print errors only");
}

function planCommand(job: string, options: Options): number {
  const opened = open(options.library);
  if (!opened.value || hasErrors(opened.diagnostics)) return report(opened.diagnostics, []);
  const car =
    options.car === undefined ? undefined : (readOne(options.car).value?.value as CarFile);
  const { value, diagnostics } = plan(opened.value, {
    job,
    fitted: options.fitted,
    ...(car ? { car } : {}),
  });
  if (value) {
    const lines = value.steps.map((step) => `${step.n}  ${step.phase}  ${step.says}`);
    process.stdout.write(`${options.json ? JSON.stringify(value, null, 2) : lines.join("\n")}\n`);
  }
  return report(
    diagnostics,
    opened.value.sources.map((s) => [s.file, s.text] as const),
  );
}

function checkCommand(paths: readonly string[], options: Options): number {
  const opened = open(options.library);
  const plans = paths.map((path) => readOne(path));
  const diagnostics =
    paths.length > 0
      ? planFiles(opened, plans)
      : [
          ...opened.diagnostics,
          ...(opened.value && !hasErrors(opened.diagnostics) ? everyJob(opened.value) : []),
        ];
  const texts = (opened.value?.sources ?? []).map((s) => [s.file, s.text] as const);
  if (!options.json) return report(diagnostics, texts);
  const files = new Map(texts);
  process.stdout.write(
    `${JSON.stringify(
      diagnostics.map((d) => toJson(d, (file) => files.get(file))),
      null,
      2,
    )}\n`,
  );
  return hasErrors(diagnostics) ? 1 : 0;
}

function planFiles(
  opened: ReturnType<typeof open>,
  plans: readonly ReturnType<typeof readOne>[],
): Diagnostic[] {
  const library = opened.value;
  if (!library || hasErrors(opened.diagnostics)) return opened.diagnostics;
  return plans.flatMap((read) =>
    read.value ? planFrom(library, read.value).diagnostics : read.diagnostics,
  );
}

function everyJob(opened: Opened): Diagnostic[] {
  const found = opened.library.ranges.flatMap((range) =>
    recipesFor(opened.library, range)
      .filter((one) => one.data["every-job"] !== true)
      .flatMap(
        (one) =>
          plan(opened, {
            job: `${range.data.range}/${one.data.recipe}`,
            fitted: one.data.when ? fit(one.data.when) : {},
          }).diagnostics,
      ),
  );
  const seen = new Set<string>();
  return found.filter((d) => {
    const key = `${d.code} ${d.message.replace(/^step \S+ /, "")}`;
    return !seen.has(key) && seen.add(key);
  });
}

function fit(when: Record<string, string | string[]>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(when).map(([option, value]) => [option, [value].flat()[0] ?? ""]),
  );
}

function report(
  diagnostics: readonly Diagnostic[],
  texts: readonly (readonly [string, string])[],
): number {
  const files = new Map(texts);
  const textOf = (file: string): string | undefined => files.get(file) ?? textFrom(file);
  for (const diagnostic of diagnostics) process.stderr.write(`${format(diagnostic, textOf)}\n`);
  return hasErrors(diagnostics) ? 1 : 0;
}

function textFrom(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return undefined;
  }
}

try {
  await program().parseAsync();
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
  else if (error instanceof UnreadablePath || error instanceof WrongUse) {
    process.stderr.write(`countback: ${error.message}\n`);
    process.exitCode = 2;
  } else {
    process.stderr.write(
      `countback failed: ${error instanceof Error ? error.message : String(error)}\n`,
    );
    process.exitCode = 3;
  }
}
