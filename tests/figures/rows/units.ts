import { type Row, rowsOf } from "../row.js";

const nist = "NIST SP 811, appendix B.8";

const msg = "Manufacturers' Standard Gauge for sheet steel";

const memory = new Set<string>([
  "100 ft/min",
  "1 in/min",
  "1 bar",
  "1 lb/h",
  "1 ft³/h",
  "1 lbf·ft",
  "1 in²",
  "1 ksi",
  "1 oz",
  "1 kip",
  "1 kgf·m",
  "212 °F",
  "68 °F",
]);

const seventhDigit = (value: number): number => 0.5 * 10 ** (Math.floor(Math.log10(value)) - 6);

const conversions = rowsOf(
  {
    figure: "convert",
    result: "value",
    source: nist,
    status: "read",
    note: "seven digits",
  },
  (
    [
      ["1 lbf·in", "N·m", 0.1129848],
      ["1 lbf·ft", "N·m", 1.355818],
      ["1 in", "mm", 25.4],
      ["1 ft", "m", 0.3048],
      ["1 ft²", "m²", 0.09290304],
      ["1 in²", "mm²", 645.16],
      ["1 mil", "µm", 25.4],
      ["1 psi", "MPa", 0.006894757],
      ["1 ksi", "MPa", 6.894757],
      ["1 psi", "kPa", 6.894757],
      ["1 bar", "kPa", 100],
      ["1 gal", "L", 3.785412],
      ["1 lb/h", "kg/h", 0.4535924],
      ["1 ft³/h", "L/min", 0.4719474],
      ["1 fl oz", "mL", 29.57353],
      ["1 lb", "kg", 0.4535924],
      ["1 oz", "g", 28.34952],
      ["1 lbf", "N", 4.448222],
      ["1 kip", "kN", 4.448222],
      ["1 kgf·m", "N·m", 9.80665],
      ["100 ft/min", "m/min", 30.48],
      ["1 in/min", "m/min", 0.0254],
      ["212 °F", "°C", 100],
      ["68 °F", "°C", 20],
    ] as const
  ).map(([value, to, expect]) => [
    { value, to },
    expect,
    { abs: seventhDigit(expect), ...(memory.has(value) ? { status: "memory" as const } : {}) },
  ]),
);

const gauges = [
  ...rowsOf(
    {
      figure: "gauge",
      result: "thickness",
      unit: "in",
      source: msg,
      status: "read",
      abs: 0.00006,
      note: "four decimals",
    },
    (
      [
        ["10", 0.1345],
        ["11", 0.1196],
        ["12", 0.1046],
        ["13", 0.0897],
        ["14", 0.0747],
        ["15", 0.0673],
        ["16", 0.0598],
        ["17", 0.0538],
        ["18", 0.0478],
        ["19", 0.0418],
        ["20", 0.0359],
        ["21", 0.0329],
        ["22", 0.0299],
        ["23", 0.0269],
        ["24", 0.0239],
        ["25", 0.0209],
        ["26", 0.0179],
      ] as const
    ).map(([gauge, inches]) => [
      { gauge },
      inches,
      Number(gauge) < 16 || ["23", "25", "26"].includes(gauge) ? { status: "memory" } : {},
    ]),
  ),
  ...rowsOf(
    {
      figure: "gauge",
      result: "thickness",
      unit: "in",
      source: "galvanized sheet gauge",
      status: "read",
      abs: 0.00006,
    },
    [
      [{ gauge: "16", surface: "galvanized" }, 0.0635],
      [{ gauge: "22", surface: "galvanized" }, 0.0336],
      [{ gauge: "24", surface: "galvanized" }, 0.0276],
    ],
  ),
  ...rowsOf(
    {
      figure: "gauge",
      result: "thickness",
      unit: "in",
      source: "one stored gauge table",
      status: "read",
      abs: 0.0002,
    },
    [
      [
        { gauge: "23" },
        0.0266,
        { disagrees: "1.125 lb/ft² / 41.82 = 0.0269; 0.0266 fits no weight" },
      ],
    ],
  ),
];

/** Units and gauges. */
export const unitRows: readonly Row[] = [...conversions, ...gauges];
