import { didYouMean } from "../diagnostics/nearest.js";
import type { Input } from "./input.js";
import { Refusal } from "./refusal.js";
import type { Unit } from "./units.js";

/** One computed value, or a range to `to`, in a unit; words where the answer is no number. */
export interface Result {
  name: string;
  value: number | string;
  to?: number;
  unit?: Unit;
  /** Significant digits on paper, 4 unless told. */
  digits?: number;
}

/** A range as a result holds it; without the upper end where both are the same. */
export function span(least: number, most: number): { value: number; to?: number } {
  return most > least ? { value: least, to: most } : { value: least };
}

/** What a figure's computation gives: its results, and what must be said about this one answer. */
export interface Answer {
  results: Result[];
  notes?: string[];
}

type Values<I> = { [K in keyof I]: I[K] extends Input<infer T> ? T : never };

/** What a figure is, before its inputs are read: the source names publication and section, and what is from memory. */
export interface Meaning {
  name: string;
  about: string;
  formula: string;
  source: string;
  /** Where it holds, and that it refuses outside. */
  range: string;
  caution?: string;
}

/** A figure: its meaning, its inputs, and its computation from inputs as text; throws a Refusal with the reason. */
export interface FigureRule extends Meaning {
  inputs: Readonly<Record<string, Input<unknown>>>;
  compute(given: Readonly<Record<string, string>>): Answer;
}

/** Makes a figure from its meaning, typed inputs and computation. */
export function figure<I extends Record<string, Input<unknown>>>(
  rule: Meaning & { inputs: I; compute(values: Values<I>): Answer },
): FigureRule {
  const compute = (given: Readonly<Record<string, string>>): Answer => {
    refuseUnknown(given, rule);
    const read = Object.entries(rule.inputs).map(([name, input]) => [
      name,
      readOne(rule.name, name, input, given[name] ?? input.fallback),
    ]);
    return rule.compute(Object.fromEntries(read) as Values<I>);
  };
  return { ...rule, compute };
}

function refuseUnknown(given: object, { name, inputs }: { name: string; inputs: object }): void {
  const known = Object.keys(inputs);
  const odd = Object.keys(given).find((key) => !known.includes(key));
  if (odd === undefined) return;
  throw new Refusal("wrong", `figure ${name} has no input '${odd}'`, [
    ...didYouMean(odd, known).filter((hint) => hint.startsWith("Did")),
    `Inputs: ${known.join(", ")}.`,
  ]);
}

function readOne(
  figureName: string,
  name: string,
  input: Input<unknown>,
  text: string | undefined,
): unknown {
  if (text === undefined && input.optional) return undefined;
  if (text === undefined)
    throw new Refusal("wrong", `figure ${figureName} needs ${name}=…, ${input.about}`, [
      `Takes ${input.takes}.`,
    ]);
  try {
    return input.read(text);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal(error.kind, `${name}: ${error.message}`, error.hints);
  }
}
