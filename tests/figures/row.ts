import type { Unit } from "../../src/figures/units.js";

/** One published value and the figure that must give it. */
export interface Row {
  figure: string;
  inputs: Record<string, string>;
  /** The name of the result; its upper end with `to`. */
  result: string;
  end?: "to";
  expect: number | string;
  unit?: Unit;
  /** The published value need only lie within our range. */
  inside?: true;
  /** Allowed deviation: `abs` in the row's unit, for the published rounding, plus `rel` as a share. */
  abs?: number;
  rel?: number;
  source: string;
  status: "read" | "memory" | "practice";
  note?: string;
  /** Why the published value is not ours; the row must then lie outside the tolerance. */
  disagrees?: string;
}

/** Rows that share all but their inputs and value. */
export function rowsOf(
  shared: Omit<Row, "inputs" | "expect">,
  rows: readonly (readonly [
    Record<string, string>,
    number | string,
    (Partial<Row> | undefined)?,
  ])[],
): Row[] {
  return rows.map(([inputs, expect, own]) => ({ ...shared, inputs, expect, ...own }));
}
