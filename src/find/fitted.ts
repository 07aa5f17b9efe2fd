import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";

/** The options of a car: those given, and the range's defaults for the rest, which are named. */
export function fittedOf(
  range: RangeFile,
  given: Readonly<Record<string, string>>,
): { fitted: Record<string, string>; taken: string[]; diagnostics: Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const bad = (message: string, hints: string[]): void =>
    void diagnostics.push({ code: "bad-option", message, hints, related: [] });
  for (const [option, value] of Object.entries(given)) {
    const known = Object.hasOwn(range.options, option) ? range.options[option] : undefined;
    if (!known)
      bad(`This range has no option '${option}'.`, didYouMean(option, Object.keys(range.options)));
    else if (!Object.hasOwn(known.values, value))
      bad(
        `The option '${option}' has no value '${value}'.`,
        didYouMean(value, Object.keys(known.values)),
      );
  }
  const taken = Object.keys(range.options).filter((option) => !(option in given));
  const defaults = Object.entries(range.options).map(([option, { default: value }]) => [
    option,
    given[option] ?? value,
  ]);
  return { fitted: Object.fromEntries(defaults), taken, diagnostics };
}

/** Whether a recipe is for a car with these options, the range's defaults for the rest. */
export function fits(
  range: RangeFile,
  { when = {} }: RecipeFile,
  given: Readonly<Record<string, string>>,
): boolean {
  return Object.entries(when).every(([option, wanted]) =>
    [wanted].flat().includes(given[option] ?? range.options[option]?.default ?? ""),
  );
}
