import { type Row, rowsOf } from "../row.js";

const schedule =
  "optimum-condition schedule, low-carbon steel SAE 1010 (layout of the RWMA class A table)";

const holes = [
  ...rowsOf(
    {
      figure: "plug-weld-hole",
      result: "hole",
      unit: "mm",
      source: "car-maker guidance quoted by an inter-industry training body",
      status: "practice",
      abs: 0.001,
    },
    [
      [{ sheet: "1.2 mm", rule: "body" }, 8],
      [{ sheet: "1 mm", rule: "body" }, 6, { note: "a second maker, steel up to 1 mm" }],
      [{ sheet: "1 mm", rule: "body" }, 8, { end: "to" }],
    ],
  ),
  ...rowsOf(
    {
      figure: "plug-weld-hole",
      result: "least hole, inch rule",
      unit: "in",
      source: "AISC 360 J2.3b: t + 5/16 in up to odd 1/16, on 16 to 24 gauge sheet",
      status: "memory",
      abs: 0.0001,
    },
    [
      [{ sheet: "0.0598 in", rule: "structural" }, 7 / 16],
      [{ sheet: "0.0478 in", rule: "structural" }, 7 / 16],
      [{ sheet: "0.0359 in", rule: "structural" }, 7 / 16],
      [{ sheet: "0.0239 in", rule: "structural" }, 7 / 16],
      [
        { sheet: "1 mm", rule: "structural" },
        8 / 25.4,
        {
          source: "body practice, 8 mm",
          status: "practice",
          disagrees: "the code asks 7/16 in: body practice never is code-compliant",
        },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "plug-weld-hole",
      result: "hole",
      unit: "mm",
      source: "AISC 360 J2.3b: even mm above t + 8",
      status: "memory",
      abs: 0.001,
    },
    [
      [{ sheet: "1.5 mm", rule: "structural" }, 10],
      [{ sheet: "3 mm", rule: "structural" }, 12],
      [
        { sheet: "1.5 mm", rule: "structural" },
        13,
        { end: "to", note: "least + 3 mm, the SI of 1/8 in" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "plug-weld-hole",
      result: "least effective diameter",
      unit: "in",
      source: "AISI / AWS D1.3",
      status: "read",
      abs: 0.001,
    },
    [
      [{ sheet: "1 mm", rule: "sheet-code" }, 0.375],
      [
        { sheet: "1 mm", rule: "sheet-code" },
        10 / 25.4,
        {
          source: "ENV 1993-1-3, 8.6.3(3), 10 mm",
          disagrees: "the European code asks 10 mm, the American 3/8 in",
        },
      ],
    ],
  ),
];

const visible = rowsOf(
  {
    figure: "plug-weld-hole",
    result: "visible weld for it",
    unit: "mm",
    source: "AWS D1.3:2008 figure 2.6, de = 0.7·d − 1.5·Σt, worked by hand",
    status: "read",
    abs: 0.005,
  },
  [
    [{ sheet: "3 mm", rule: "sheet-code" }, 26.46],
    [
      { sheet: "0.8 mm", rule: "sheet-code" },
      17.32,
      { source: "AISI S100 E2.2, de ≤ 0.55·d, worked by hand", status: "memory" },
    ],
  ],
);

const spacing = [
  ...rowsOf(
    {
      figure: "weld-spacing",
      result: "least pitch",
      unit: "mm",
      source: "AISC 360 J2.3b, 4 hole diameters",
      status: "memory",
      abs: 0.001,
    },
    [
      [{ weld: "plug", hole: "8 mm" }, 32],
      [{ weld: "plug", hole: "10 mm" }, 40],
    ],
  ),
  ...rowsOf(
    {
      figure: "weld-spacing",
      result: "least pitch",
      unit: "in",
      source: schedule,
      status: "read",
      abs: 0.001,
    },
    [
      [{ weld: "spot", sheet: "0.031 in" }, 0.5],
      [{ weld: "spot", sheet: "0.05 in" }, 0.875],
    ],
  ),
  ...rowsOf(
    {
      figure: "weld-spacing",
      result: "least edge distance",
      unit: "mm",
      source: "1 to 2 weld diameters, metalforming trade-association guideline; 1.5 taken",
      note: "the guideline is 1 to 2 diameters wide",
      status: "read",
      rel: 0.34,
    },
    [
      [{ weld: "spot", sheet: "0.031 in" }, 1.5 * 0.161 * 25.4],
      [{ weld: "spot", sheet: "0.05 in" }, 1.5 * 0.21 * 25.4],
      [{ weld: "plug", hole: "8 mm" }, 12],
    ],
  ),
];

const count = [
  ...rowsOf(
    {
      figure: "plug-weld-count",
      result: "one plug weld",
      unit: "N",
      source: "AISI S100 E2.2, 2.2·t·(d − t)·Fu, worked by hand",
      status: "memory",
      abs: 1,
    },
    [
      [{ sheet: "0.8 mm", hole: "8 mm", welds: "10", steel: "mild" }, 3421],
      [{ sheet: "1 mm", hole: "8 mm", welds: "10", steel: "mild" }, 4158],
      [
        { sheet: "3 mm", hole: "5 mm", welds: "10", steel: "mild" },
        3564,
        { note: "the weld itself would bear 0.6·480·π/4·25 = 5655 N" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "plug-weld-count",
      result: "plug welds",
      unit: "1",
      source: "the same, worked by hand",
      status: "memory",
    },
    [
      [
        { sheet: "0.8 mm", hole: "8 mm", welds: "10", steel: "mild", margin: "1" },
        12,
        { note: "10 · 3972 / 3421 = 11.6" },
      ],
      [
        { sheet: "0.8 mm", hole: "8 mm", welds: "10", steel: "mild" },
        14,
        { note: "1.2 times as much, 13.9" },
      ],
      [
        { sheet: "0.8 mm", hole: "16 mm", welds: "10", steel: "mild", margin: "1" },
        10,
        { note: "10 · 3972 / 7223 = 5.5: never below the factory's" },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "plug-weld-count",
      result: "plug welds",
      unit: "1",
      source: "car-maker guidance quoted by a training body: as many as the factory's",
      status: "practice",
    },
    [
      [
        { sheet: "0.8 mm", hole: "8 mm", welds: "10", steel: "mild", margin: "1" },
        10,
        {
          disagrees:
            "the code's tearing strength asks for more than one for one; the maker's count and place still win",
        },
      ],
    ],
  ),
];

/** Holes, spacing and count of plug welds. */
export const plugWeldRows: readonly Row[] = [...holes, ...visible, ...spacing, ...count];
