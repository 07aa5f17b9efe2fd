import { didYouMean } from "../diagnostics/nearest.js";
import { numberOf } from "./inch.js";
import { type Quantity, allowed, readQuantity, valueIn } from "./quantity.js";
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
  const read = (text: string): Quantity<D> => {
    const given = readQuantity(text, dimension);
    const size = valueIn(given, unit);
    if (size >= least && size <= most) return given;
    throw new Refusal("refused", `'${text}' is outside ${takes}`, [
      ...slip(given.value, given.unit, (value) => {
        const other = valueIn({ value, unit: given.unit }, unit);
        return other >= least && other <= most;
      }),
      allowed(dimension),
    ]);
  };
  return { about, takes, read };
}

/** The value ten times smaller or greater, where that would have been allowed. */
function slip(value: number, unit: string, fits: (value: number) => boolean): string[] {
  const meant = [value / 10, value * 10].map((one) => Number(one.toPrecision(12))).find(fits);
  return meant === undefined ? [] : [`Did you mean ${meant} ${unit}?`];
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
