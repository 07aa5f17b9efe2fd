import { type Row, rowsOf } from "../row.js";

const shigley = "Shigley, Mechanical Engineering Design, 9th ed.";

const metricArea = rowsOf(
  {
    figure: "stress-area",
    result: "stress area",
    unit: "mm²",
    source: "ISO 898-1 / ISO 724, stress area, two decimals",
    status: "read",
    abs: 0.005,
  },
  [
    [{ thread: "M4" }, 8.78],
    [{ thread: "M6" }, 20.12],
    [{ thread: "M8" }, 36.61],
    [{ thread: "M10" }, 57.99],
    [{ thread: "M12" }, 84.27],
    [{ thread: "M14" }, 115.44],
    [{ thread: "M16" }, 156.67],
  ],
);

const unifiedArea = rowsOf(
  {
    figure: "stress-area",
    result: "stress area",
    unit: "in²",
    source: `${shigley} table 8-2 (ANSI B1.1-1974)`,
    status: "read",
    abs: 0.0001,
    note: "four decimals, cut as well as rounded",
  },
  [
    [{ thread: "1/4-20" }, 0.0318],
    [{ thread: "1/4-28" }, 0.0364],
    [{ thread: "5/16-18" }, 0.0524],
    [{ thread: "5/16-24" }, 0.058],
    [{ thread: "3/8-16" }, 0.0775],
    [{ thread: "3/8-24" }, 0.0878],
    [{ thread: "7/16-14" }, 0.1063],
    [{ thread: "7/16-20" }, 0.1187],
    [{ thread: "1/2-20" }, 0.1599],
    [{ thread: "9/16-12" }, 0.182, { abs: 0.0005 }],
    [{ thread: "9/16-18" }, 0.203, { abs: 0.0005 }],
    [
      { thread: "7/16-14" },
      0.0163,
      { source: "one web table", disagrees: "two digits swapped: 0.1063 in the textbook" },
    ],
  ],
);

const isoLoads: Record<string, Record<string, number>> = {
  M4: { "4.6": 1980, "5.8": 3340, "8.8": 5100, "10.9": 7290, "12.9": 8520 },
  M5: { "4.6": 3200, "4.8": 4400, "5.8": 5400, "8.8": 8230, "10.9": 11800, "12.9": 13800 },
  M6: { "4.6": 4520, "5.8": 7640, "8.8": 11600, "10.9": 16700, "12.9": 19500 },
  M8: { "5.8": 13900, "8.8": 21200, "10.9": 30400, "12.9": 35500 },
  M10: { "4.6": 13000, "5.8": 22000, "8.8": 33700, "10.9": 48100, "12.9": 56300 },
  M12: { "4.6": 19000, "4.8": 26100, "5.8": 32000, "8.8": 48900, "12.9": 81800 },
  M14: { "4.6": 25900, "5.8": 43700, "8.8": 66700, "10.9": 95500, "12.9": 112000 },
  M16: { "4.8": 48700, "5.8": 59700, "8.8": 91000, "10.9": 130000, "12.9": 152000 },
};

const roundedDown: Record<string, Partial<Row>> = {
  "M6 8.8": { disagrees: "20.1 mm² · 580 MPa = 11 658 N; the table rounds down to 11 600" },
};

const isoProof: Row[] = Object.entries(isoLoads).flatMap(([thread, loads]) =>
  rowsOf(
    {
      figure: "proof-load",
      result: "proof load",
      unit: "N",
      source: "ISO 898-1, proof loads, coarse pitch",
      status: "read",
      rel: 0.006,
      note: "three digits, from a stress area of three digits",
    },
    Object.entries(loads).map(([strength, load]) => [
      { thread, class: strength },
      load,
      roundedDown[`${thread} ${strength}`],
    ]),
  ),
);

const isoRare = rowsOf(
  {
    figure: "proof-load",
    result: "proof load",
    unit: "N",
    source: "ISO 898-1, proof loads, coarse pitch",
    status: "memory",
    rel: 0.006,
  },
  [
    [{ thread: "M8", class: "5.6" }, 10200],
    [{ thread: "M8", class: "6.8" }, 16100],
    [{ thread: "M8", class: "9.8" }, 23800],
    [{ thread: "M10", class: "5.6" }, 16200],
    [{ thread: "M10", class: "6.8" }, 25500],
    [{ thread: "M10", class: "9.8" }, 37700],
    [{ thread: "M18", class: "8.8" }, 115000],
    [{ thread: "M20", class: "8.8" }, 147000],
  ],
);

const saeProof = rowsOf(
  {
    figure: "proof-load",
    result: "proof load",
    unit: "lbf",
    source: "SAE J429, proof loads",
    status: "memory",
    rel: 0.007,
    note: "rounded to 50 or 100 lbf",
  },
  [
    [{ thread: "1/4-28", class: "grade-5" }, 3100],
    [{ thread: "5/16-18", class: "grade-5" }, 4450],
    [
      { thread: "5/16-24", class: "grade-5" },
      4900,
      { disagrees: "0.0580 in² · 85 ksi = 4930 lbf; the standard rounds down to 4900" },
    ],
    [{ thread: "3/8-16", class: "grade-5" }, 6600],
    [{ thread: "3/8-24", class: "grade-5" }, 7450],
    [{ thread: "7/16-14", class: "grade-5" }, 9050],
    [{ thread: "7/16-20", class: "grade-5" }, 10100],
    [{ thread: "1/2-13", class: "grade-5" }, 12100],
    [{ thread: "1/2-20", class: "grade-5" }, 13600],
    [{ thread: "9/16-12", class: "grade-5" }, 15500],
    [{ thread: "3/4-10", class: "grade-2" }, 18400],
    [{ thread: "1/4-28", class: "grade-8" }, 4350],
    [{ thread: "5/16-24", class: "grade-8" }, 6950],
    [{ thread: "3/8-16", class: "grade-8" }, 9300],
    [{ thread: "3/8-24", class: "grade-8" }, 10500],
    [{ thread: "7/16-14", class: "grade-8" }, 12800],
    [{ thread: "7/16-20", class: "grade-8" }, 14200],
    [{ thread: "1/2-20", class: "grade-8" }, 19200],
    [{ thread: "9/16-12", class: "grade-8" }, 21800],
    [{ thread: "9/16-18", class: "grade-8" }, 24400],
    [
      { thread: "1/4-20", class: "grade-8" },
      3816,
      { source: "US Navy NSTM chapter 075, worked example", status: "read", rel: 0.002 },
    ],
    [
      { thread: "3/8-16", class: "grade-5" },
      0.0775 * 65_000,
      {
        source: "one vendor's reprint of SAE J429, 65 ksi",
        status: "read",
        disagrees: "85 ksi in the textbook and in the standard's own loads; 65 ksi is a misprint",
      },
    ],
  ],
);

const chart = "a workshop tap-drill chart (metric, UNC, UNF), two copies";

const tapDrills = [
  ...rowsOf(
    {
      figure: "tap-drill",
      result: "drill",
      unit: "mm",
      source: chart,
      status: "read",
      abs: 0.051,
      note: "to the nearest 0.1 mm drill, M8 up and M12 down from a half",
    },
    [
      [{ thread: "M3" }, 2.5],
      [{ thread: "M4" }, 3.3],
      [{ thread: "M5" }, 4.2],
      [{ thread: "M6" }, 5],
      [{ thread: "M7" }, 6],
      [{ thread: "M8" }, 6.8],
      [{ thread: "M8x1" }, 7],
      [{ thread: "M10" }, 8.5],
      [{ thread: "M12" }, 10.2],
      [{ thread: "M14" }, 12],
      [{ thread: "M16" }, 14],
      [{ thread: "M20" }, 17.5],
    ],
  ),
  ...rowsOf(
    {
      figure: "tap-drill",
      result: "drill",
      unit: "in",
      source: chart,
      status: "read",
      rel: 0.01,
      note: "the nearest number, letter or fraction drill",
    },
    [
      [{ thread: "1/4-20" }, 0.201],
      [{ thread: "1/4-28" }, 0.213],
      [{ thread: "5/16-18" }, 0.257],
      [{ thread: "5/16-24" }, 0.272],
      [{ thread: "3/8-16" }, 0.3125],
      [{ thread: "3/8-24" }, 0.332],
      [{ thread: "7/16-14" }, 0.368],
      [{ thread: "7/16-20" }, 0.3906],
      [{ thread: "1/2-13" }, 0.4219],
      [{ thread: "1/2-20" }, 0.4531],
      [
        { thread: "9/16-12" },
        0.4844,
        { disagrees: "0.479 lies between 15/32 and 31/64; the chart takes the greater" },
      ],
      [{ thread: "5/8-11" }, 0.5312],
    ],
  ),
];

const fractions = rowsOf(
  {
    figure: "tap-drill",
    result: "nearest 1/64",
    source: "nearest 64th of the drill, worked by hand",
    status: "practice",
  },
  [
    [{ thread: "1/4-20" }, "13/64 in"],
    [{ thread: "3/8-16" }, "5/16 in"],
  ],
);

const clearance = rowsOf(
  {
    figure: "clearance-hole",
    result: "hole",
    unit: "mm",
    source: "ISO 273, as a machine-element maker reprints it (grades 1 to 3)",
    status: "read",
    abs: 0.001,
  },
  [
    [{ thread: "M4", fit: "medium" }, 4.5],
    [{ thread: "M5", fit: "fine" }, 5.3],
    [{ thread: "M6", fit: "medium" }, 6.6],
    [{ thread: "M6", fit: "coarse" }, 7],
    [{ thread: "M8", fit: "fine" }, 8.4],
    [{ thread: "M8", fit: "medium" }, 9],
    [{ thread: "M8", fit: "coarse" }, 10],
    [{ thread: "M10", fit: "medium" }, 11],
    [{ thread: "M12", fit: "fine" }, 13],
    [{ thread: "M12", fit: "medium" }, 13.5],
    [{ thread: "M14", fit: "medium" }, 15.5],
    [{ thread: "M16", fit: "coarse" }, 18.5],
    [{ thread: "M3", fit: "medium" }, 3.4],
    [{ thread: "M14", fit: "fine" }, 15],
    [{ thread: "M18", fit: "fine" }, 19],
    [{ thread: "M18", fit: "coarse" }, 21],
    [{ thread: "M20", fit: "medium" }, 22],
    [{ thread: "M20", fit: "coarse" }, 24],
    [
      { thread: "M8", fit: "medium" },
      8.6,
      {
        source: "a machining shop's chart, free fit",
        disagrees: "not ISO 273: a drill index's next size",
      },
    ],
  ],
);

/** Stress areas, proof loads and holes of threads. */
export const threadRows: readonly Row[] = [
  ...metricArea,
  ...unifiedArea,
  ...isoProof,
  ...isoRare,
  ...saeProof,
  ...tapDrills,
  ...fractions,
  ...clearance,
];
