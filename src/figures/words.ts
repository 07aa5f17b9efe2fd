import { valueIn } from "./quantity.js";
import type { Result } from "./rule.js";
import type { Unit } from "./units.js";

/** The unit in which the other half of the trade reads a result. */
const other: Partial<Record<Unit, Unit>> = {
  mm: "in",
  µm: "mil",
  m: "ft",
  ft: "m",
  in: "mm",
  "mm²": "in²",
  N: "lbf",
  "N·m": "lbf·ft",
  "m/min": "in/min",
  "cm/min": "in/min",
  "L/min": "ft³/h",
  "m²/L": "ft²/gal",
  "kg/h": "lb/h",
  L: "gal",
  mL: "fl oz",
  g: "oz",
};

/** A result as it is read: '23.9 to 35.9 N·m (17.6 to 26.5 lbf·ft)'. */
export function wordsOf(result: Result): string {
  const { value, unit } = result;
  if (typeof value === "string") return value;
  const own = inUnit(result, value, unit);
  const second = unit === undefined ? undefined : other[unit];
  return second === undefined || result.digits ? own : `${own} (${inUnit(result, value, second)})`;
}

function inUnit(result: Result, value: number, unit: Unit | undefined): string {
  const rounded = (one: number): string => {
    const converted = result.unit && unit ? valueIn({ value: one, unit: result.unit }, unit) : one;
    return String(Number(converted.toPrecision(result.digits ?? 4)));
  };
  const upper = result.to === undefined ? "" : ` to ${rounded(result.to)}`;
  return `${rounded(value)}${upper}${unit === undefined || unit === "1" ? "" : ` ${unit}`}`;
}
