import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { compute } from "../figures/compute.js";
import { Refusal } from "../figures/refusal.js";
import type { Result } from "../figures/rule.js";
import type { ComputedSource } from "../model/figure.js";
import type { Figure } from "../model/generated/recipe.js";
import type { Path, Source } from "../model/source.js";
import { fitsKind } from "./quantity.js";
import { figureUnits } from "./plausible.js";

interface Asked {
  kind: Figure["kind"];
  source: ComputedSource;
}

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
    if (asksToBeComputed(one)) {
      const asked = withChosen(one, chosen);
      return { ...asked, ...unlessRefused([...path, "source"], () => valueOf(asked)) };
    }
    if (asksForAmount(one)) {
      const { amount } = one;
      return {
        ...one,
        amount: undefined,
        ...unlessRefused([...path, "amount"], () => amountOf(amount)),
      };
    }
    return Object.fromEntries(
      Object.entries(one as object).map(([key, item]) => [key, walk(item, [...path, key])]),
    );
  }

  function unlessRefused<R>(path: Path, computed: () => R): R | undefined {
    try {
      return computed();
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      const { message, hints } = error;
      const span = source.spanOf(path);
      report({ code: "no-figure", message, span, hints: [...hints], related: [] });
      return undefined;
    }
  }
}

/** Inputs that the command line decides for a figure, wherever it is asked for: the code of the fire watch. */
export type Chosen = Readonly<Record<string, Readonly<Record<string, string>>>>;

function withChosen(asked: Asked, chosen: Chosen): Asked {
  const { with: given, ...query } = asked.source;
  return { ...asked, source: { ...query, with: { ...given, ...chosen[query.figure] } } };
}

interface AskedAmount {
  consumable: string;
  amount: ComputedSource;
}

function asksForAmount(one: object): one is AskedAmount {
  const { consumable, amount } = one as Partial<AskedAmount>;
  return consumable !== undefined && typeof amount === "object";
}

function amountOf(query: ComputedSource): { amount: number; source: ComputedSource } {
  const { one, results, source } = answerTo(query);
  if (typeof one?.value !== "number") throw lacking("amount", query, results);
  return { amount: rounded(one.to ?? one.value), source };
}

function asksToBeComputed(one: object): one is Asked {
  const { kind, source } = one as Partial<Asked>;
  return (
    typeof kind === "string" && typeof source === "object" && source !== null && "figure" in source
  );
}

type Value = { value?: number; to?: number; unit: string; source: ComputedSource };

function valueOf({ kind, source: query }: Asked): Value {
  const { one, results, source } = answerTo(query);
  if (!one) throw lacking("result", query, results);
  const unit = figureUnits.find((unit) => unit === (one.unit ?? "1"));
  if (unit === undefined || !fitsKind(kind, unit)) {
    const message = `'${one.name}' of '${query.figure}' is in ${one.unit ?? "no unit"}, which a ${kind} is not.`;
    throw new Refusal("wrong", message, [known(results)]);
  }
  const { value, to, digits } = one;
  return {
    ...(typeof value === "number" ? { value: rounded(value, digits) } : {}),
    ...(to === undefined ? {} : { to: rounded(to, digits) }),
    unit,
    source,
  };
}

interface Answered {
  one: Result | undefined;
  results: readonly Result[];
  source: ComputedSource;
}

/** What a figure answers, with the `one` result that is asked for: the first where none is named. */
function answerTo(query: ComputedSource): Answered {
  const { figure, result, with: given } = query;
  const { results, about, formula, source: published } = compute(figure, inputsOf(given));
  const one = results.find(({ name }) => result === undefined || name === result);
  return { one, results, source: { ...query, about, formula, published } };
}

function lacking(
  what: string,
  { figure, result = "" }: ComputedSource,
  results: readonly Result[],
): Refusal {
  const message = `The figure '${figure}' has no ${what} '${result}'.`;
  return new Refusal("wrong", message, [known(results)]);
}

function known(results: readonly Result[]): string {
  return `Results: ${results.map(({ name }) => name).join(", ")}.`;
}

function rounded(value: number, digits = 3): number {
  return Number(value.toPrecision(digits));
}

/** Inputs as the figures read them. */
function inputsOf(given: Readonly<Record<string, string | number>>): Record<string, string> {
  return Object.fromEntries(Object.entries(given).map(([key, one]) => [key, String(one)]));
}
