import { Option, type Command } from "commander";
import { ownLibrary } from "../pipeline.js";

/** The options that every command takes. */
export interface CommonOptions {
  car?: string;
  fitted: Record<string, string>;
  library: string;
  language?: string;
  found?: string;
  json?: boolean;
  quiet?: boolean;
}

/** A command line that cannot be understood. */
export class WrongUse extends Error {}

/** Adds the options that every command takes. */
export function common(command: Command): Command {
  return command
    .option("--car <file>", "car file")
    .option("--fitted <option=value>", "an option of the car; may be repeated", addFitted, {})
    .option("--library <dir>", "folder of recipes", ownLibrary)
    .option("--json", "print JSON")
    .option("--quiet", "say nothing but errors");
}

function addFitted(text: string, before: Record<string, string>): Record<string, string> {
  const [option, value, more] = text.split("=");
  if (!option || !value || more !== undefined)
    throw new WrongUse(`--fitted takes option=value, not '${text}'`);
  return { ...before, [option]: value };
}

/** An option with a closed set of values. */
export function choice(flags: string, about: string, values: readonly string[]): Option {
  return new Option(flags, about).choices([...values]).default(values[0]);
}
