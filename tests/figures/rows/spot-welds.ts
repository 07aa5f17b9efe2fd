import { type Row, rowsOf } from "../row.js";

const schedule =
  "optimum-condition schedule, low-carbon steel SAE 1010 (layout of the RWMA class A table)";

const aisiTable = "AISI specification table, reprinted in Merritt handbook table 8.6";

const scheduleRows: [number, number, number, number, number][] = [
  [0.021, 300, 0.139, 3 / 8, 7 / 16],
  [0.031, 530, 0.161, 1 / 2, 7 / 16],
  [0.04, 812, 0.181, 3 / 4, 1 / 2],
  [0.05, 1195, 0.21, 7 / 8, 9 / 16],
  [0.062, 1717, 0.231, 1, 5 / 8],
  [0.078, 2365, 0.268, 1.125, 11 / 16],
  [0.094, 3054, 0.304, 1.25, 3 / 4],
  [0.109, 3672, 0.338, 21 / 16, 13 / 16],
  [0.125, 4300, 0.375, 1.5, 7 / 8],
];

const spot: Row[] = scheduleRows.flatMap(([sheet, shear, nugget, pitch, overlap]) => {
  const inputs = { sheet: `${sheet} in` };
  const shared = { figure: "spot-weld", source: schedule, status: "read", rel: 0.001 } as const;
  return [
    ...rowsOf({ ...shared, result: "least shear", unit: "lbf" }, [[inputs, shear]]),
    ...rowsOf({ ...shared, result: "nugget", unit: "in" }, [[inputs, nugget]]),
    ...rowsOf({ ...shared, result: "least pitch", unit: "in" }, [[inputs, pitch]]),
    ...rowsOf({ ...shared, result: "least overlap", unit: "in" }, [[inputs, overlap]]),
  ];
});

const otherSpot = [
  ...rowsOf(
    {
      figure: "spot-weld",
      result: "nominal shear",
      unit: "kip",
      source: aisiTable,
      status: "read",
      rel: 0.05,
      note: "a table by steps against a power law",
    },
    [
      [
        { sheet: "0.03 in" },
        1,
        { disagrees: "the older table is higher than 144·t^1.47, 0.83 kip" },
      ],
      [
        { sheet: "0.04 in" },
        1.42,
        { disagrees: "the older table is higher than 144·t^1.47, 1.27 kip" },
      ],
      [{ sheet: "0.07 in" }, 2.83],
      [
        { sheet: "0.08 in" },
        3.33,
        { disagrees: "the older table is lower than 144·t^1.47, 3.51 kip" },
      ],
      [{ sheet: "0.1 in" }, 4.99],
      [
        { sheet: "0.11 in" },
        6.07,
        { disagrees: "the older table is higher than 144·t^1.47, 5.61 kip" },
      ],
      [
        { sheet: "0.125 in" },
        7.29,
        { disagrees: "the older table is higher than 144·t^1.47, 6.77 kip" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "spot-weld",
      result: "least shear",
      unit: "lbf",
      source: aisiTable,
      status: "read",
      rel: 0.01,
    },
    [
      [
        { sheet: "0.04 in" },
        1420,
        {
          disagrees:
            "a nominal design value, not the least shear that a schedule must reach: other meaning",
        },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "spot-weld",
      result: "least pitch",
      unit: "in",
      source: "metalforming trade-association guideline, 10·t",
      status: "read",
      rel: 0.01,
    },
    [
      [
        { sheet: "0.06 in" },
        0.6,
        { disagrees: "class A asks 1 in at 0.062 in; the greater is taken" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "spot-weld",
      result: "nugget",
      unit: "mm",
      source: "5·√t at start, ISO 14373 / BS 1140:1993",
      note: "two bodies' rules, 10 % apart at most",
      status: "memory",
      rel: 0.1,
    },
    [
      [
        { sheet: "0.79 mm" },
        5 * Math.sqrt(0.79),
        { note: "two bodies' rules, 10 % apart at most" },
      ],
      [{ sheet: "1.27 mm" }, 5 * Math.sqrt(1.27)],
      [{ sheet: "1.57 mm" }, 5 * Math.sqrt(1.57)],
    ],
  ),
];

/** Spot welds by sheet. */
export const spotWeldRows: readonly Row[] = [...spot, ...otherSpot];
