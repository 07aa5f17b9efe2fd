import { choice, otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { type Answer, figure, span } from "./rule.js";

type Pair = readonly [least: number, most: number];

/** By sheet in mm: wire (mm), current (A), voltage (V), travel (cm/min), gas (L/min). */
type Row = readonly [
  sheet: number,
  wire: Pair,
  current: Pair,
  voltage: Pair,
  travel: Pair,
  gas: Pair,
];

/** Square butt at low speed, no gap, 80 % argon and 20 % carbon dioxide: power source manuals, 1.2 and 1.6 mm by two makers. */
const butt: readonly Row[] = [
  [0.6, [0.4, 0.6], [25, 25], [15, 15], [30, 30], [10, 10]],
  [0.8, [0.6, 0.8], [30, 40], [15, 15], [40, 55], [10, 10]],
  [1, [0.8, 1], [50, 55], [13, 15], [40, 55], [10, 15]],
  [1.2, [0.8, 0.9], [60, 70], [14, 16], [30, 50], [10, 15]],
  [1.6, [0.8, 0.9], [100, 110], [16, 17], [40, 60], [10, 15]],
];

/** Arc spot through the upper of two equal sheets, the same gas: the same manuals; the travel is none. */
const spot: readonly Row[] = [
  [0.6, [0.6, 0.8], [95, 100], [22, 24], [0, 0], [12, 12]],
  [0.8, [0.6, 0.8], [100, 130], [22, 24], [0, 0], [12, 12]],
  [1, [0.8, 0.8], [155, 155], [24, 26], [0, 0], [12, 12]],
];

/** The rows on both sides of a sheet, or its own; none outside the table. */
function beside(rows: readonly Row[], t: number): readonly Row[] {
  const own = rows.filter(([sheet]) => Math.abs(sheet - t) < 1e-9);
  const next = rows.findIndex(([sheet]) => sheet > t);
  return own.length > 0 ? own : next > 0 ? rows.slice(next - 1, next + 1) : [];
}

const over = (pairs: readonly Pair[]) =>
  span(Math.min(...pairs.map(([low]) => low)), Math.max(...pairs.map(([, high]) => high)));

/** Where to start setting a wire welder on sheet: current, voltage, wire, travel and gas, each as a range. */
export const gmawStart = figure({
  name: "gmaw-start",
  about: "where to start setting a wire welder, by sheet",
  inputs: {
    sheet: quantity("thickness of each sheet", "length", [0.6, 1.6, "mm"]),
    joint: otherwise(choice("the joint", ["butt", "arc-spot"]), "butt"),
  },
  formula: "table by sheet and joint; between two rows, the range over both",
  source:
    "Power source manuals (two makers), 80 % argon and 20 % carbon dioxide: low-speed square butt without gap, and arc spot.",
  range:
    "Butt 0.6 to 1.6 mm, arc spot 0.6 to 1 mm on two equal sheets, bare low-carbon steel, short arc; refuses others.",
  caution:
    "A starting range only: set it on a test piece of the same sheets, process and position, and break that first. A drilled plug weld lies between the two.",
  compute: (given) => {
    const t = valueIn(given.sheet, "mm");
    const rows = beside(given.joint === "butt" ? butt : spot, t);
    if (rows.length === 0)
      throw new Refusal("refused", `no published start for ${given.joint} on ${t} mm`, [
        given.joint === "butt" ? "Butt: 0.6 to 1.6 mm." : "Arc spot: 0.6 to 1 mm.",
      ]);
    return { results: resultsOf(rows) };
  },
});

function resultsOf(rows: readonly Row[]): Answer["results"] {
  const column = (index: 1 | 2 | 3 | 4 | 5) => over(rows.map((row) => row[index]));
  const travel = column(4);
  return [
    { name: "current", ...column(2), unit: "A" },
    { name: "voltage", ...column(3), unit: "V" },
    { name: "wire", ...column(1), unit: "mm" },
    ...(travel.value > 0 ? [{ name: "travel", ...travel, unit: "cm/min" as const }] : []),
    { name: "gas flow", ...column(5), unit: "L/min" },
  ];
}
