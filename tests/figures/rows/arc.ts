import { type Row, rowsOf } from "../row.js";

const manual = "a power source manual, MAG low-speed square butt, gap 0, 80 Ar 20 CO2";

const volts = rowsOf(
  { figure: "gmaw-start", result: "voltage", unit: "V", source: manual, status: "read", abs: 0.01 },
  [
    [{ sheet: "0.8 mm" }, 15],
    [{ sheet: "1 mm" }, 13],
    [{ sheet: "1 mm" }, 15, { end: "to" }],
    [{ sheet: "1.2 mm" }, 14],
    [{ sheet: "1.6 mm" }, 17, { end: "to" }],
    [{ sheet: "1 mm", joint: "arc-spot" }, 26, { end: "to" }],
  ],
);

const gmaw = [
  ...rowsOf(
    {
      figure: "gmaw-start",
      result: "current",
      unit: "A",
      source: manual,
      status: "read",
      abs: 0.01,
    },
    [
      [{ sheet: "0.6 mm" }, 25],
      [{ sheet: "0.8 mm" }, 30],
      [{ sheet: "0.9 mm" }, 30, { note: "the range over the rows on both sides" }],
      [{ sheet: "0.9 mm" }, 55, { end: "to" }],
      [{ sheet: "0.8 mm" }, 40, { end: "to" }],
      [{ sheet: "1 mm" }, 50],
      [{ sheet: "1.2 mm" }, 70, { end: "to", note: "two makers agree" }],
      [{ sheet: "1.6 mm" }, 100, { note: "two makers agree" }],
      [{ sheet: "0.8 mm", joint: "arc-spot" }, 130, { end: "to", source: "the same, arc spot" }],
    ],
  ),
  ...rowsOf(
    {
      figure: "gmaw-start",
      result: "gas flow",
      unit: "ft³/h",
      source: "two power source manuals, thin sheet, 21 to 32 ft³/h",
      status: "read",
      abs: 0.5,
    },
    [
      [{ sheet: "1.2 mm" }, 21],
      [{ sheet: "1.2 mm" }, 32, { end: "to" }],
    ],
  ),
  ...rowsOf(
    {
      figure: "gmaw-start",
      result: "current",
      unit: "A",
      source: "1 A per 0.001 in, power source manual and trade journal",
      note: "a rule of thumb, to 5 %",
      status: "read",
      inside: true,
      rel: 0.05,
    },
    [
      [{ sheet: "0.8 mm" }, 31],
      [
        { sheet: "1 mm" },
        39,
        { disagrees: "two makers' tables give 50 to 55 A: the rule is only a first guess" },
      ],
      [{ sheet: "1.2 mm" }, 47, { disagrees: "two makers' tables give 60 to 70 A" }],
      [{ sheet: "1.6 mm" }, 63, { disagrees: "two makers' tables give 100 to 110 A" }],
    ],
  ),
  ...rowsOf(
    {
      figure: "wire-speed",
      result: "wire speed",
      unit: "in/min",
      source: "a power source manual, worked at 62.5 A",
      status: "read",
      abs: 0.5,
    },
    [
      [{ current: "62.5 A", wire: "0.6 mm" }, 219],
      [{ current: "62.5 A", wire: "0.035 in" }, 100],
      [{ current: "62.5 A", wire: "0.8 mm" }, 125, { source: "2 in/min per A", status: "memory" }],
    ],
  ),
  ...rowsOf(
    {
      figure: "wire-speed",
      result: "wire speed",
      unit: "m/min",
      source: "the same manual",
      status: "read",
      abs: 0.005,
    },
    [[{ current: "62.5 A", wire: "0.6 mm" }, 5.56]],
  ),
];

const wire = [
  ...rowsOf(
    {
      figure: "wire-length",
      result: "length",
      unit: "in",
      source: "a MIG handbook, inches of steel wire per pound",
      note: "density and diameter as rounded there",
      status: "read",
      rel: 0.012,
    },
    [
      [{ wire: "0.03 in", mass: "1 lb" }, 4956],
      [{ wire: "0.035 in", mass: "1 lb" }, 3648],
      [{ wire: "0.045 in", mass: "1 lb" }, 2196],
    ],
  ),
  ...rowsOf(
    {
      figure: "deposition",
      result: "deposition rate",
      unit: "lb/h",
      source: "a deposition-rate article, 13.1·D²·WFS·EE",
      note: "13.1 against 13.35 from the density of steel",
      status: "read",
      rel: 0.025,
    },
    [
      [{ wire: "0.052 in", speed: "320 in/min", efficiency: "0.98" }, 11.1],
      [{ wire: "0.03 in", speed: "200 in/min", efficiency: "1" }, 13.1 * 0.03 ** 2 * 200],
      [{ wire: "0.035 in", speed: "300 in/min", efficiency: "0.9" }, 13.1 * 0.035 ** 2 * 300 * 0.9],
      [
        { wire: "0.03 in", speed: "200 in/min", efficiency: "1" },
        (60 * 200) / 4956,
        { source: "a MIG handbook, 60·WFS / 4956", rel: 0.01 },
      ],
    ],
  ),
];

/** Settings of a wire welder and what it lays down. */
export const arcRows: readonly Row[] = [...volts, ...gmaw, ...wire];
