import { didYouMean } from "../diagnostics/nearest.js";
import { figures } from "./figures.js";
import { Refusal } from "./refusal.js";
import type { Answer, FigureRule } from "./rule.js";

/** A computed figure with all that must stand beside it; `assumed` are the inputs that nobody gave. */
export interface Computed extends Answer {
  figure: string;
  about: string;
  inputs: { name: string; value: string; assumed: boolean }[];
  formula: string;
  source: string;
  range: string;
  caution?: string;
}

/** The figure of a name; an unknown name is refused with the nearest. */
export function figureOf(name: string): FigureRule {
  const found = figures.find((rule) => rule.name === name);
  if (found !== undefined) return found;
  const names = figures.map((rule) => rule.name);
  throw new Refusal("wrong", `no figure is called '${name}'`, [
    ...didYouMean(name, names),
    `Figures: ${names.join(", ")}.`,
  ]);
}

/** Computes a figure from inputs as text, as `{ thread: "M8", class: "8.8" }`; throws a Refusal with the reason. */
export function compute(name: string, given: Readonly<Record<string, string>>): Computed {
  const rule = figureOf(name);
  const answer = rule.compute(given);
  const inputs = Object.entries(rule.inputs).flatMap(([input, { fallback }]) => {
    const value = given[input] ?? fallback;
    return value === undefined ? [] : [{ name: input, value, assumed: given[input] === undefined }];
  });
  const { about, formula, source, range, caution } = rule;
  const rest = { formula, source, range, ...(caution === undefined ? {} : { caution }) };
  return { figure: name, about, inputs, ...answer, ...rest };
}
