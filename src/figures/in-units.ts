import type { Figure } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { textOf } from "./format.js";
import { readUnit, valueIn } from "./quantity.js";
import type { Unit } from "./units.js";

/** The unit that a shop with inch tools reads instead of a metric one (factors: NIST SP 811, appendix B.8). */
const inchOf: Partial<Record<string, Unit>> = {
  mm: "in",
  "N·m": "lbf·ft",
  "°C": "°F",
  "L/min": "ft³/h",
  bar: "psi",
};

/** A figure as an inch shop reads it, the metric value kept in brackets; what has no inch unit stays as it is. */
export function inInches(figure: Figure, words: Words): Figure {
  const unit = inchOf[figure.unit ?? ""];
  if (unit === undefined) return figure;
  if (typeof figure.value !== "number") return { ...figure, unit };
  const convert = (value: number): number =>
    rounded(valueIn({ value, unit: readUnit(figure.unit ?? "") }, unit));
  const { to, tolerance } = figure;
  return {
    ...figure,
    value: convert(figure.value),
    ...(to === undefined ? {} : { to: convert(to) }),
    ...(tolerance === undefined ? {} : { tolerance: convert(tolerance) }),
    unit,
    also: textOf(figure, words),
  };
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

/** A step whose figures are as an inch shop reads them, in its sentences too. */
export function stepInInches(step: Step, words: Words): Step {
  const swap = (text: string): string =>
    step.figures.reduce((done, { text: metric, inch }) => done.replace(metric, inch), text);
  const each = <T extends { figure?: Figure }>(items: readonly T[]): T[] =>
    items.map((item) => (item.figure ? { ...item, figure: inInches(item.figure, words) } : item));
  const { hold, note } = step;
  return {
    ...step,
    says: swap(step.says),
    ...(note === undefined ? {} : { note: swap(note) }),
    checks: step.checks.map(swap),
    figures: step.figures.map((figure) => ({ ...figure, text: figure.inch })),
    facts: each(step.facts),
    readings: each(step.readings),
    fixings: step.fixings.map((fixing) =>
      fixing.torque ? { ...fixing, torque: inInches(fixing.torque, words) } : fixing,
    ),
    ...(hold
      ? { hold: { ...hold, accept: swap(hold.accept), readings: each(hold.readings) } }
      : {}),
  };
}
