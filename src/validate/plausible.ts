import type { Figure } from "../model/generated/recipe.js";

/** A unit in which a recipe writes a figure. */
export type FigureUnit = NonNullable<Figure["unit"]>;

/** Every one of them. */
export const figureUnits: readonly FigureUnit[] = [
  "mm",
  "in",
  "µm",
  "m",
  "ft",
  "N·m",
  "lbf·ft",
  "s",
  "min",
  "h",
  "°C",
  "A",
  "V",
  "Ω",
  "bar",
  "lx",
  "L/min",
  "1",
];

/** Between which values a kind of figure can lie, in the unit given. */
export interface Bounds {
  unit: FigureUnit;
  least: number;
  most: number;
}

// Common practice on old unibody cars, without a source: these are our own bounds, wide enough for
// every sound figure and narrow enough to catch a slip of a digit or a unit.
/** The plausible bounds of each kind of figure. */
export const plausible: Record<Figure["kind"], Bounds> = {
  "pilot-hole": { unit: "mm", least: 2, most: 5 },
  "plug-hole": { unit: "mm", least: 4, most: 12 },
  sheet: { unit: "mm", least: 0.5, most: 3 },
  torque: { unit: "N·m", least: 1, most: 300 },
  gap: { unit: "mm", least: 0, most: 50 },
  length: { unit: "mm", least: 0.5, most: 6000 },
  distance: { unit: "m", least: 0.5, most: 100 },
  tolerance: { unit: "mm", least: 0.01, most: 20 },
  film: { unit: "mm", least: 0.005, most: 3 },
  time: { unit: "h", least: 0.0002, most: 7 * 24 },
  temperature: { unit: "°C", least: -20, most: 250 },
  count: { unit: "1", least: 1, most: 1000 },
  current: { unit: "A", least: 0.001, most: 400 },
  voltage: { unit: "V", least: 0.01, most: 60 },
  resistance: { unit: "Ω", least: 0.0001, most: 1_000_000 },
  pressure: { unit: "bar", least: 0.01, most: 250 },
  flow: { unit: "L/min", least: 1, most: 60 },
  shade: { unit: "1", least: 1, most: 14 },
  light: { unit: "lx", least: 50, most: 20_000 },
};
