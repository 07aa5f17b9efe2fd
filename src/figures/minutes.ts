import type { Figure } from "../model/figure.js";

const minutes: Record<string, number> = { s: 1 / 60, min: 1, h: 60 };

/** A time in minutes; nothing where the figure has no value or is no time. */
export function minutesOf(figure: Figure | undefined): number | undefined {
  return spanOf(figure)?.[0];
}

/** A time in minutes, from the least to the most that it allows; the same twice where it is no range. */
export function spanOf(figure: Figure | undefined): [number, number] | undefined {
  const factor = minutes[figure?.unit ?? ""];
  if (typeof figure?.value !== "number" || factor === undefined) return undefined;
  return [figure.value * factor, (figure.to ?? figure.value) * factor];
}
