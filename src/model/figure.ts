/** Where a figure comes from. */
export type FigureSource =
  "maker" | "practice" | "demo" | { publication: string; section?: string };

/** A quantity with its unit and source; without a value the shop writes it in. */
export interface Figure {
  kind: string;
  value?: number | string;
  to?: number;
  tolerance?: number;
  unit?: string;
  source: FigureSource;
}
