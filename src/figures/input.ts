import { didYouMean } from "../diagnostics/nearest.js";
import { numberOf } from "./inch.js";
import { meant } from "./meant.js";
import { type Quantity, readQuantity, valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import type { Dimension, UnitOf } from "./units.js";

/** One input of a figure: what it means, what may be written, what stands in when nothing is, and how it is read; `read` refuses with what is allowed. */
export interface Input<T> {
  about: string;
  takes: string;
  fallback?: string;
  optional?: true;
  read(text: string): T;
}

/** A quantity of one dimension between two values in the unit given; outside, a refusal. */
export function quantity<D extends Dimension>(
  about: string,
  dimension: D,
  [least, most, unit]: readonly [number, number, UnitOf<D>],
): Input<Quantity<D>> {
  const takes = `${least} to ${most} ${unit}`;
  const fits = (one: Quantity<D>): boolean =>
    valueIn(one, unit) >= least * (1 - 1e-9) && valueIn(one, unit) <= most * (1 + 1e-9);
  const read = (text: string): Quantity<D> => {
    const given = readQuantity(text, dimension);
    if (fits(given)) return given;
    throw new Refusal("refused", `'${text}' is outside ${takes}`, meant(text, given, fits));
  };
  return { about, takes, read };
}

/** A number without a unit between two values. */
export function number(
  about: string,
  least: number,
  most: number,
  { whole = false } = {},
): Input<number> {
  const takes = `${whole ? "a whole number, " : ""}${least} to ${most}`;
  const read = (text: string): number => {
    const value = numberOf(text.trim());
    if (value === undefined || (whole && !Number.isInteger(value)))
      throw new Refusal("wrong", `'${text}' is not ${whole ? "a whole" : "a"} number`, [
        `Takes ${takes}, without a unit.`,
      ]);
    if (value >= least && value <= most) return value;
    throw new Refusal("refused", `'${text}' is outside ${takes}`);
  };
  return { about, takes, read };
}

/** One of a closed set of words. */
export function choice<T extends string>(about: string, words: readonly T[]): Input<T> {
  const read = (text: string): T => {
    const found = words.find((word) => word === text.trim().toLowerCase());
    if (found !== undefined) return found;
    throw new Refusal(
      "wrong",
      `'${text}' is not one of ${words.join(", ")}`,
      didYouMean(text, words),
    );
  };
  return { about, takes: words.join(" | "), read };
}

/** The same input with a value that stands in when none is given. */
export function otherwise<T>(input: Input<T>, fallback: string): Input<T> {
  return { ...input, fallback };
}

/** The same input, which may also be left out. */
export function optional<T>(input: Input<T>): Input<T | undefined> {
  return { ...input, optional: true };
}
