import { type LabelPaper, type Paper, papers } from "../model/printing.js";
import { WrongUse } from "./options.js";

const keys = [
  "columns",
  "rows",
  "width",
  "height",
  "left",
  "top",
  "across",
  "down",
  "start",
] as const;

/** Reads a sheet of labels from `columns=2,rows=4,width=99.1,…`; pitch and start may be left out. */
export function labelPaper(text: string, paper: Paper): LabelPaper {
  const given = new Map(text.split(",").map((pair) => pair.split("=") as [string, string]));
  for (const key of given.keys())
    if (!keys.some((known) => known === key))
      throw new WrongUse(`--labels knows no '${key}'; it takes ${keys.join(", ")}`);
  const number = (key: string, fallback?: number): number => {
    const value = given.has(key) ? Number(given.get(key)) : fallback;
    if (value === undefined || !Number.isFinite(value) || value < 0)
      throw new WrongUse(`--labels needs ${key}=…, in millimetres or a whole number`);
    return value;
  };
  const [width, height] = [number("width"), number("height")];
  const labels = {
    columns: number("columns"),
    rows: number("rows"),
    width,
    height,
    left: number("left"),
    top: number("top"),
    across: number("across", width),
    down: number("down", height),
    start: number("start", 1),
  };
  mustFit(labels, paper);
  return labels;
}

function mustFit(labels: LabelPaper, paper: Paper): void {
  const { columns, rows, width, height, left, top, across, down, start } = labels;
  const whole = [columns, rows, start].every((one) => Number.isInteger(one) && one > 0);
  if (!whole) throw new WrongUse("--labels: columns, rows and start are whole numbers from 1");
  const [wide, high] = [left + (columns - 1) * across + width, top + (rows - 1) * down + height];
  const size = papers[paper];
  if (wide > size.width + 0.1)
    throw new WrongUse(
      `--labels: ${columns} columns end at ${round(wide)} mm, the paper at ${size.width} mm`,
    );
  if (high > size.height + 0.1)
    throw new WrongUse(
      `--labels: ${rows} rows end at ${round(high)} mm, the paper at ${size.height} mm`,
    );
  if (across < width || down < height)
    throw new WrongUse("--labels: the labels lie over one another");
  if (start > columns * rows)
    throw new WrongUse(`--labels: start is beyond the ${columns * rows} labels`);
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
