#!/usr/bin/env node
import { Command, CommanderError } from "commander";
import { checkCommand } from "./commands/check.js";
import { figureCommand } from "./commands/figure.js";
import { type CommonOptions, WrongUse, choice, common } from "./commands/options.js";
import { type PlanOptions, planCommand } from "./commands/plan.js";
import { type PrintCommandOptions, printCommand } from "./commands/print.js";
import { UnreadablePath } from "./diagnostics/unreadable-path.js";

function program(): Command {
  const root = new Command("countback").description(
    "Proven, printed sheets for strip, repair and refit jobs.",
  );
  root.exitOverride();
  common(root.command("print <job>").description("print the sheets of a job, or of a plan file"))
    .option("--found <file>", "what was found and added during the work")
    .option("--out <dir>", "folder to write to", ".")
    .addOption(choice("--paper <size>", "paper", ["a4", "letter"]))
    .addOption(choice("--units <system>", "units of figures", ["metric", "inch"]))
    .option("--language <code>", "language of the sheets", "en")
    .option("--large", "larger type")
    .option("--sheets <names>", "which sheets, with commas between")
    .option(
      "--labels <dimensions>",
      "bag labels on a sheet of labels: columns=2,rows=4,width=99.1,…",
    )
    .option("--draft", "print although the plan does not prove, as a draft")
    .option("--fillable", "make the boxes and lines fields to fill in on a screen")
    .option("--html", "write the sheets for a browser instead")
    .option("--strict", "count warnings as errors")
    .action(async (job: string, options: PrintCommandOptions) => {
      process.exitCode = await printCommand(job, options);
    });
  common(root.command("plan <job>").description("resolve, arrange and prove a job"))
    .option("--found <file>", "what was found and added during the work")
    .option("--why <step>", "tell why a step or part is in the plan")
    .option("--against <other>", "what differs with another car, other options or a plan file")
    .action((job: string, options: PlanOptions) => {
      process.exitCode = planCommand(job, options);
    });
  common(
    root
      .command("check [paths...]")
      .description("prove plan files, printed sheets, or the whole library"),
  )
    .option("--strict", "count warnings as errors")
    .action(async (paths: string[], options: CommonOptions & { strict?: boolean }) => {
      process.exitCode = await checkCommand(paths, options);
    });
  root
    .command("figure [names...]")
    .description("print one computed figure with its source: figure NAME input=value …")
    .option("--json", "print JSON")
    .action((names: string[], options: { json?: boolean }) => {
      process.exitCode = figureCommand(names, options);
    });
  return root;
}

// A reader that has seen enough, as `head` has, closes the pipe: that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

try {
  await program().parseAsync();
} catch (error) {
  process.exitCode = exitCodeOf(error);
  if (!(error instanceof CommanderError)) process.stderr.write(`countback: ${wordsOf(error)}\n`);
}

function exitCodeOf(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
  return error instanceof UnreadablePath || error instanceof WrongUse ? 2 : 3;
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
