import { numberOf } from "../figures/inch.js";
import { dimensionOf, valueIn } from "../figures/quantity.js";
import type { Figure } from "../model/generated/recipe.js";
import { type FigureUnit, figureUnits, plausible } from "./plausible.js";

/** A number as somebody may have written it: plain, or an inch fraction with or without a whole part. */
export interface Written {
  text: string;
  value: number;
}

/** Reads 3, 0.25, '5/16' and '1 1/8'. */
export function written(value: number | string): Written {
  const text = String(value);
  return { text, value: typeof value === "number" ? value : (numberOf(value) ?? Number.NaN) };
}

/** Whether a unit measures what a kind of figure is. */
export function fitsKind(kind: Figure["kind"], unit: FigureUnit): boolean {
  return dimensionOf(unit) === dimensionOf(plausible[kind].unit);
}

/** Whether a number with a unit lies within the bounds of its kind. */
export function isPlausible(kind: Figure["kind"], value: number, unit: FigureUnit): boolean {
  const { least, most, unit: own } = plausible[kind];
  if (!fitsKind(kind, unit)) return false;
  const size = valueIn({ value, unit }, own);
  return size >= least && size <= most;
}

/** What may have been meant by an implausible figure: the first of the usual slips that makes sense. */
export function meant(kind: Figure["kind"], value: number | string, unit: FigureUnit): string[] {
  const other = figureUnits.filter((one) => one !== unit && fitsKind(kind, one));
  const slips: [Written, FigureUnit][] = [
    ...slipsOf(value).map((one): [Written, FigureUnit] => [one, unit]),
    ...(typeof value === "string"
      ? []
      : other.map((one): [Written, FigureUnit] => [written(value), one])),
  ];
  const hit = slips.find(([one, as]) => isPlausible(kind, one.value, as));
  return hit ? [`Did you mean ${hit[0].text}${hit[1] === "1" ? "" : ` ${hit[1]}`}?`] : [];
}

/** '3 1/8' for '3/8' or '1/8'; 12 for 1.2 or 120. */
function slipsOf(value: number | string): Written[] {
  if (typeof value === "number")
    return [value / 10, value * 10].map((one) => written(Number(one.toPrecision(12))));
  const [whole, over, under] = value.split(/[ /]/);
  return under === undefined ? [] : [`${whole}/${under}`, `${over}/${under}`].map(written);
}
