import { nearest } from "../diagnostics/nearest.js";
import { numberOf } from "./inch.js";
import { Refusal } from "./refusal.js";
import { type Dimension, type Unit, type UnitOf, otherNames, units } from "./units.js";

/** A number with its unit; two of different dimensions never meet. */
export interface Quantity<D extends Dimension = Dimension> {
  value: number;
  unit: UnitOf<D>;
}

/** What a unit measures. */
export function dimensionOf(unit: Unit): Dimension {
  return units[unit][0];
}

/** The value of a quantity in another unit of its dimension; with mixed dimensions, a refusal. */
export function valueIn<D extends Dimension>(quantity: Quantity<D>, unit: UnitOf<D>): number {
  const [from, to] = [quantity.unit, unit].map((name) => units[name as Unit]);
  if (from === undefined || to === undefined || from[0] !== to[0])
    throw new Refusal("wrong", `${quantity.unit} does not convert to ${unit}`, [
      allowed(dimensionOf(quantity.unit)),
    ]);
  if (from === to) return quantity.value;
  return (quantity.value * from[1] + (from[2] ?? 0) - (to[2] ?? 0)) / to[1];
}

/** The units of a dimension, by name. */
export function unitsOf(dimension: Dimension): Unit[] {
  return (Object.keys(units) as Unit[]).filter((unit) => dimensionOf(unit) === dimension);
}

/** Reads '8 mm', '5/16in' or '20 Nm'; refuses a bare number, an unknown unit and one of another dimension. */
export function readQuantity<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  const { value, unit } = readAny(text, dimension);
  if (dimensionOf(unit) === dimension) return { value, unit: unit as UnitOf<D> };
  throw new Refusal("wrong", `'${text}' is a ${dimensionOf(unit)}, not a ${dimension}`, [
    allowed(dimension),
  ]);
}

/** Reads a quantity of any dimension; where the unit's name could mean several, the one expected. */
export function readAny(text: string, expected?: Dimension): Quantity {
  const [, digits = "", name = ""] = /^\s*([-+]?[\d./\s-]*)(.*?)\s*$/.exec(text) ?? [];
  const value = numberOf(digits.trim());
  const hints = expected ? [allowed(expected)] : [];
  if (value === undefined)
    throw new Refusal("wrong", `'${text}' does not start with a number`, [
      ...hints,
      "Write 0.8 with a point, 5/16 or 1 1/8.",
    ]);
  if (name === "") throw new Refusal("wrong", `'${text}' has no unit`, hints);
  return { value, unit: readUnit(name, expected) };
}

/** Reads a unit as the trade writes it; an unknown one is refused with the nearest. */
export function readUnit(text: string, expected?: Dimension): Unit {
  const plain = plainOf(text);
  const all = Object.keys(units) as Unit[];
  const found =
    all.find((unit) => unit === text) ??
    all.find((unit) => plainOf(unit) === plain) ??
    otherNames[plain];
  if (found !== undefined) return found;
  const known = expected ? unitsOf(expected) : all;
  const near = nearest(text, known);
  throw new Refusal("wrong", `unknown unit '${text}'`, [
    ...(near ? [`Did you mean '${near}'?`] : []),
    expected ? allowed(expected) : `Known: ${all.join(", ")}.`,
  ]);
}

function plainOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[\s·.*^-]/g, "")
    .replace("µ", "u")
    .replace("²", "2")
    .replace("³", "3");
}

/** What may stand as the unit of a dimension, as a hint. */
export function allowed(dimension: Dimension): string {
  return `A ${dimension} takes ${unitsOf(dimension).join(", ")}.`;
}
