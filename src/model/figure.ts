/** Where a figure comes from. */
export type FigureSource =
  "maker" | "practice" | "demo" | { publication: string; section?: string } | ComputedSource;

/** A figure that was computed: from which inputs, by which formula, after whom. */
export interface ComputedSource {
  figure: string;
  result?: string;
  /** What the figure is, in words. */
  about?: string;
  with: Record<string, string | number>;
  formula?: string;
  published?: string;
}

/** A quantity with its unit and source; without a value the shop writes it in. */
export interface Figure {
  kind: string;
  value?: number | string;
  to?: number;
  tolerance?: number;
  unit?: string;
  /** The same in the unit in which it was written, where it is shown in another. */
  also?: string;
  source: FigureSource;
}

/** Whether a figure was computed here. */
export function isComputed(source: FigureSource): source is ComputedSource {
  return typeof source !== "string" && "figure" in source;
}
