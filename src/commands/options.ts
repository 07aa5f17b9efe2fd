import { Option, type Command } from "commander";
import { compute } from "../figures/compute.js";
import { Refusal } from "../figures/refusal.js";
import { ownLibrary } from "../pipeline.js";

/** The options that every command takes. */
export interface CommonOptions {
  car?: string;
  fitted: Record<string, string>;
  library: string;
  language?: string;
  code?: string;
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
    .option("--code <name>", "the code that sets the fire watch (see: figure fire-watch)")
    .option("--json", "print JSON")
    .option("--quiet", "say nothing but errors");
}

function addFitted(text: string, before: Record<string, string>): Record<string, string> {
  const [option, value, more] = text.split("=");
  if (!option || !value || more !== undefined)
    throw new WrongUse(`--fitted takes option=value, not '${text}'`);
  return { ...before, [option]: value };
}

/** The code of the fire watch, if one is chosen and there is such a one. */
export function knownCode(code: string | undefined): string | undefined {
  if (code === undefined) return undefined;
  try {
    compute("fire-watch", { code });
    return code;
  } catch (error) {
    if (error instanceof Refusal) throw new WrongUse([error.message, ...error.hints].join("; "));
    throw error;
  }
}

/** An option with a closed set of values. */
export function choice(flags: string, about: string, values: readonly string[]): Option {
  return new Option(flags, about).choices([...values]).default(values[0]);
}
