import type { Figure } from "../model/figure.js";

const minutes: Record<string, number> = { s: 1 / 60, min: 1, h: 60 };

/** A time in minutes; nothing where the figure has no value or is no time. */
export function minutesOf(figure: Figure | undefined): number | undefined {
  const factor = minutes[figure?.unit ?? ""];
  return typeof figure?.value === "number" && factor !== undefined
    ? figure.value * factor
    : undefined;
}
