import type { Figure, FigureSource } from "../model/figure.js";
import type { Words } from "../model/words.js";

/** The letter that stands beside a figure on paper and says where it comes from. */
export function markOf(source: FigureSource): string {
  if (source === "maker") return "M";
  if (source === "practice") return "P";
  if (source === "demo") return "D";
  return "figure" in source ? "C" : "S";
}

/** A figure as a technician reads it: '3 mm', '10 to 14 h', '372 mm ± 1.5 mm', or a blank for the shop to fill. */
export function textOf(figure: Figure, { phrases }: Words): string {
  const unit = figure.unit === undefined || figure.unit === "1" ? "" : ` ${figure.unit}`;
  if (figure.value === undefined) return `____${unit}`;
  const upper = figure.to === undefined ? "" : ` ${phrases["to"] ?? ""} ${figure.to}`;
  const tolerance = figure.tolerance === undefined ? "" : ` ± ${figure.tolerance}${unit}`;
  const also = figure.also === undefined ? "" : ` (${figure.also})`;
  return `${figure.value}${upper}${unit}${tolerance}${also}`;
}
