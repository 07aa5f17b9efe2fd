import { compute } from "../../src/figures/compute.js";
import { valueIn } from "../../src/figures/quantity.js";
import type { Result } from "../../src/figures/rule.js";
import type { Unit } from "../../src/figures/units.js";
import type { Row } from "./row.js";
import { amountRows } from "./rows/amounts.js";
import { clampRows } from "./rows/clamp.js";
import { arcRows } from "./rows/arc.js";
import { dimensionRows } from "./rows/dimensions.js";
import { drillingRows } from "./rows/drilling.js";
import { plugWeldRows } from "./rows/plug-welds.js";
import { safetyRows } from "./rows/safety.js";
import { spotWeldRows } from "./rows/spot-welds.js";
import { threadRows } from "./rows/threads.js";
import { torqueRows } from "./rows/torque.js";
import { unitRows } from "./rows/units.js";

/** Every row of every topic. */
export const rows: readonly Row[] = [
  ...threadRows,
  ...torqueRows,
  ...clampRows,
  ...spotWeldRows,
  ...plugWeldRows,
  ...arcRows,
  ...safetyRows,
  ...drillingRows,
  ...amountRows,
  ...dimensionRows,
  ...unitRows,
];

/** How far a figure is from its row: in the row's unit, and as a share of the published value. */
export interface Deviation {
  got: number | string;
  off: number;
  share: number;
}

/** Computes a row's figure and measures it against the published value; words are either the same or wholly off. */
export function deviationOf(row: Row): Deviation {
  const { results } = compute(row.figure, row.inputs);
  const result = results.find(({ name }) => name === row.result);
  if (result === undefined) throw new Error(`${row.figure} has no result '${row.result}'`);
  if (typeof row.expect === "string" || typeof result.value === "string")
    return {
      got: result.value,
      off: Number(result.value !== row.expect),
      share: Number(result.value !== row.expect),
    };
  const low = inUnit(result, result.value, row.unit);
  const high = result.to === undefined ? low : inUnit(result, result.to, row.unit);
  const inside = Math.min(Math.max(row.expect, low), high);
  const got = row.inside ? inside : row.end === "to" ? high : low;
  const off = Math.abs(got - row.expect);
  return { got, off, share: row.expect === 0 ? off : off / Math.abs(row.expect) };
}

function inUnit({ unit }: Result, value: number, as: Unit | undefined): number {
  return unit === undefined || as === undefined ? value : valueIn({ value, unit }, as);
}

/** What a row allows, in its unit. */
export function allowanceOf({ abs = 0, rel = 0, expect }: Row): number {
  return abs + rel * (typeof expect === "number" ? Math.abs(expect) : 0) + 1e-9;
}
