import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { compute } from "../figures/compute.js";
import { Refusal } from "../figures/refusal.js";
import type { Figure } from "../model/generated/recipe.js";
import type { Path, Source } from "../model/source.js";
import { fitsKind } from "./quantity.js";
import { figureUnits } from "./plausible.js";

type Asked = Figure & {
  source: { figure: string; result?: string; with: Record<string, string | number> };
};

/**
 * A file's value with every figure that asks to be computed filled in; one that is refused is reported and left
 * without a value.
 */
export function withComputed<T>(
  value: T,
  source: Source,
  report: (found: Diagnostic) => void,
  chosen: Chosen = {},
): T {
  return walk(value, []) as T;

  function walk(one: unknown, path: Path): unknown {
    if (Array.isArray(one)) return one.map((item, i) => walk(item, [...path, i]));
    if (typeof one !== "object" || one === null) return one;
    if (asksToBeComputed(one)) return filled(withChosen(one, chosen), source, path, report);
    if (asksForAmount(one)) return withAmount(one, source, path, report);
    return Object.fromEntries(
      Object.entries(one as object).map(([key, item]) => [key, walk(item, [...path, key])]),
    );
  }
}

/** Inputs that the command line decides for a figure, wherever it is asked for: the code of the fire watch. */
export type Chosen = Readonly<Record<string, Readonly<Record<string, string>>>>;

function withChosen(asked: Asked, chosen: Chosen): Asked {
  const { figure, result, with: given } = asked.source;
  const inputs = { ...given, ...chosen[figure] };
  return {
    ...asked,
    source: { figure, with: inputs, ...(result === undefined ? {} : { result }) },
  };
}

type AskedAmount = { consumable: string; amount: Asked["source"] };

function asksForAmount(one: object): one is AskedAmount {
  const { consumable, amount } = one as Partial<AskedAmount>;
  return consumable !== undefined && typeof amount === "object";
}

/** A use of a supply with its amount worked out as a figure is; without one where that is refused. */
function withAmount(
  { consumable, amount: asked }: AskedAmount,
  source: Source,
  path: Path,
  report: (found: Diagnostic) => void,
): { consumable: string; amount?: number; note?: string } {
  const { figure, result, with: given } = asked;
  try {
    const { results } = compute(figure, inputsOf(given));
    const one = results.find(({ name }) => result === undefined || name === result);
    if (typeof one?.value === "number")
      return {
        consumable,
        amount: rounded(one.to ?? one.value, 3),
        note: `C: figure ${figure}`,
      };
    const message = `The figure '${figure}' has no amount '${result ?? ""}'.`;
    throw new Refusal("wrong", message, [known(results)]);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { message, hints } = error;
    const span = source.spanOf([...path, "amount"]);
    report({ code: "no-figure", message, span, hints: [...hints], related: [] });
    return { consumable };
  }
}

function asksToBeComputed(one: object): one is Asked {
  const { kind, source } = one as Partial<Asked>;
  return (
    typeof kind === "string" && typeof source === "object" && source !== null && "figure" in source
  );
}

function filled(
  asked: Asked,
  source: Source,
  path: Path,
  report: (found: Diagnostic) => void,
): Asked {
  const tell = (message: string, hints: string[]): Asked => {
    const span = source.spanOf([...path, "source"]);
    report({ code: "no-figure", message, span, hints, related: [] });
    return asked;
  };
  const { figure, result, with: given } = asked.source;
  try {
    const { results, formula, source: published } = compute(figure, inputsOf(given));
    const one = result === undefined ? results[0] : results.find(({ name }) => name === result);
    if (!one)
      return tell(`The figure '${figure}' has no result '${result ?? ""}'.`, [known(results)]);
    const unit = figureUnits.find((unit) => unit === (one.unit ?? "1"));
    if (unit === undefined || !fitsKind(asked.kind, unit))
      return tell(
        `'${one.name}' of '${figure}' is in ${one.unit ?? "no unit"}, which a ${asked.kind} is not.`,
        [known(results)],
      );
    const { value, to } = one;
    const chosen = result === undefined ? {} : { result };
    const computed = { figure, ...chosen, with: given, formula, published };
    return {
      ...asked,
      ...(typeof value === "number" ? { value: rounded(value, one.digits) } : {}),
      ...(to === undefined ? {} : { to: rounded(to, one.digits) }),
      unit,
      source: computed,
    };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return tell(error.message, [...error.hints]);
  }
}

function known(results: readonly { name: string }[]): string {
  return `Results: ${results.map(({ name }) => name).join(", ")}.`;
}

function rounded(value: number, digits = 4): number {
  return Number(value.toPrecision(digits));
}

/** Inputs as the figures read them. */
function inputsOf(given: Readonly<Record<string, string | number>>): Record<string, string> {
  return Object.fromEntries(Object.entries(given).map(([key, one]) => [key, String(one)]));
}
