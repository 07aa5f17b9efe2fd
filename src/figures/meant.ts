import { numberOf } from "./inch.js";
import { type Quantity, unitsOf } from "./quantity.js";
import { type Dimension, type UnitOf, units } from "./units.js";

/** What may have been meant by a quantity that is out of range: the first of the usual slips that fits, as a hint. */
export function meant<D extends Dimension>(
  text: string,
  { value, unit }: Quantity<D>,
  fits: (quantity: Quantity<D>) => boolean,
): string[] {
  const digits = text.replace(/[^\d./ -]/g, "").trim();
  const others = unitsOf(units[unit][0]).filter((other) => other !== unit) as UnitOf<D>[];
  const slips: [string, Quantity<D>][] = [
    ...slipsOf(digits, value).map((slip): [string, Quantity<D>] => [
      slip,
      { value: numberOf(slip) ?? Number.NaN, unit },
    ]),
    ...others.map((other): [string, Quantity<D>] => [digits, { value, unit: other }]),
  ];
  const hit = slips.find(([, quantity]) => fits(quantity));
  return hit ? [`Did you mean ${hit[0]} ${hit[1].unit}?`] : [];
}

/** '3 1/8' for '3/8' or '1/8'; 12 for 1.2 or 120. */
function slipsOf(digits: string, value: number): string[] {
  const [whole, over, under] = digits.split(/[ /-]+/);
  if (under !== undefined) return [`${whole}/${under}`, `${over}/${under}`];
  return digits.includes("/")
    ? []
    : [value / 10, value * 10].map((one) => String(Number(one.toPrecision(12))));
}
