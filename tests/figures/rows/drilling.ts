import { type Row, rowsOf } from "../row.js";

const sawTable = "a hole saw maker's table, bi-metal in mild steel";

const drills = [
  ...rowsOf(
    {
      figure: "spindle-speed",
      result: "spindle speed",
      unit: "rpm",
      source: "a shop reference, worked",
      status: "read",
      abs: 0.5,
    },
    [
      [{ tool: "drill", diameter: "1/2 in", speed: "80 ft/min" }, 611],
      [
        { tool: "drill", diameter: "3/8 in", speed: "80 ft/min" },
        813,
        { disagrees: "3.82 · 80 / 0.375 = 814.9; the source rounds low" },
      ],
      [{ tool: "drill", diameter: "1/2 in" }, 611, { note: "the lower end, 80 ft/min" }],
      [
        { tool: "drill", diameter: "1/2 in" },
        764,
        { end: "to", note: "the upper end, 100 ft/min, worked by hand" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "spindle-speed",
      result: "spindle speed",
      unit: "rpm",
      source: "a shop reference table, 70 ft/min",
      note: "to 10 rpm or more",
      status: "read",
      rel: 0.02,
    },
    [
      [{ tool: "drill", diameter: "1/2 in", speed: "70 ft/min" }, 530],
      [
        { tool: "drill", diameter: "1/4 in", speed: "70 ft/min" },
        1000,
        { disagrees: "the formula gives 1070; the table rounds to the machine's step" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "spindle-speed",
      result: "spindle speed",
      unit: "rpm",
      source: "a locksmith journal, 80 ft/min",
      status: "read",
      abs: 4,
    },
    [[{ tool: "hole-saw", diameter: "3/4 in" }, 410, { note: "to 10 rpm" }]],
  ),
  ...rowsOf(
    {
      figure: "spindle-speed",
      result: "spindle speed",
      unit: "rpm",
      source: sawTable,
      status: "read",
      inside: true,
      rel: 0.03,
      note: "to 5 or 10 rpm",
    },
    (
      [
        ["9/16", 580],
        ["5/8", 550],
        ["11/16", 500],
        ["3/4", 460],
        ["7/8", 390],
        ["1", 350],
        ["1 1/16", 325],
        ["1 1/8", 300],
        ["1 1/4", 275],
        ["1 3/8", 250],
        ["1 1/2", 230],
      ] as const
    ).map(([size, rpm]) => [{ tool: "hole-saw", diameter: `${size} in` }, rpm]),
  ),
];

const inchDrills = [
  ...rowsOf(
    {
      figure: "inch-drill",
      result: "drill",
      unit: "mm",
      source: "1 in = 25.4 mm, NIST SP 811; steps of 0.5 mm are common",
      status: "practice",
      abs: 0.001,
    },
    [
      [{ size: "5/16 in" }, 8],
      [{ size: "3/8 in" }, 9.5],
      [{ size: "1/8 in" }, 3],
      [{ size: "1/4 in" }, 6.5],
      [{ size: "1/2 in" }, 12.5],
    ],
  ),
  ...rowsOf(
    {
      figure: "inch-drill",
      result: "error",
      unit: "mm",
      source: "1 in = 25.4 mm, NIST SP 811",
      status: "read",
      abs: 0.0001,
    },
    [
      [{ size: "5/16 in" }, 0.0625],
      [{ size: "3/8 in" }, -0.025],
      [{ size: "1/8 in" }, -0.175],
    ],
  ),
  ...rowsOf(
    {
      figure: "inch-drill",
      result: "inch",
      source: "fraction in lowest terms",
      status: "practice",
    },
    [
      [{ size: "0.3125 in" }, "5/16 in"],
      [{ size: "10/32 in" }, "5/16 in"],
      [{ size: "8 mm" }, "≈ 5/16 in"],
    ],
  ),
];

/** Spindle speeds and drills. */
export const drillingRows: readonly Row[] = [...drills, ...inchDrills];
