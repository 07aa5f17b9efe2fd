import { type PlacedFigure, figuresOf } from "../figures.js";
import { type FigureUnit, plausible } from "../plausible.js";
import { fitsKind, isPlausible, meant, written } from "../quantity.js";
import type { Report, Rule } from "../rule.js";

/** Every figure has the unit of its kind and lies where such a figure can lie. */
export const implausible: Rule = {
  whole: false,
  run: (library, report) => {
    for (const placed of figuresOf(library)) judge(placed, report);
  },
};

function judge(placed: PlacedFigure, report: Report): void {
  const { kind, value, to } = placed.figure;
  const unit = placed.figure.unit ?? (kind === "count" ? "1" : undefined);
  const tell = teller(placed, report);
  if (unit === undefined) {
    if (value !== undefined) tell([], "has no unit", [`Write one: unit: ${plausible[kind].unit}.`]);
  } else if (!fitsKind(kind, unit)) tell(["unit"], `cannot be in ${unit}`, [inUnit(kind)]);
  else if (typeof value === "string" && unit !== "in")
    tell(["value"], "is a fraction, which only stands with inches", ["Write it as a decimal."]);
  else {
    bound(placed, "value", value, unit, tell);
    bound(placed, "to", to, unit, tell);
    if (value !== undefined && to !== undefined && to <= written(value).value)
      tell(["to"], `ends at ${to}, which is not above its start`, ["Write the lower end first."]);
  }
}

type Tell = (key: readonly string[], what: string, hints: string[]) => void;

function teller({ source, path, figure: { kind } }: PlacedFigure, report: Report): Tell {
  return (key, what, hints) =>
    report({
      code: "implausible",
      message: `A figure of the kind '${kind}' ${what}.`,
      span: source.spanOf([...path, ...key]),
      hints,
      related: [],
    });
}

function inUnit(kind: PlacedFigure["figure"]["kind"]): string {
  return `It is in ${plausible[kind].unit} or a unit of the same sort.`;
}

function bound(
  { figure: { kind } }: PlacedFigure,
  key: "value" | "to",
  value: number | string | undefined,
  unit: FigureUnit,
  tell: Tell,
): void {
  if (value === undefined || isPlausible(kind, written(value).value, unit)) return;
  const { least, most, unit: base } = plausible[kind];
  const between = `it lies between ${least} and ${most}${base === "1" ? "" : ` ${base}`}`;
  tell(
    [key],
    `cannot be ${value}${unit === "1" ? "" : ` ${unit}`}: ${between}`,
    meant(kind, value, unit),
  );
}
