import { type Row, rowsOf } from "../row.js";

const ifi =
  "IFI technical data N-12/N-16 as reprinted: 75 % of SAE J429 proof load, K 0.20 plain, 0.15 plated";
const army = "US Army TM 5-3895-367-14&P, table H-1, clean dry threads";
const metricChart =
  "metric torque table, 75 % of ISO 898-1 proof load; K not printed, 0.20 dry and 0.15 lubricated";
const guide = "a torque guide, SAE grade 2 columns, 75 % of proof load";

/** Clamp load (lbf), torque (lbf·ft) with K 0.20 and with 0.15; lbf·in where it says so. */
const ifiRows: [string, string, number, number, number, "lbf·in"?][] = [
  ["1/4-20", "grade-5", 2025, 8, 76, "lbf·in"],
  ["5/16-18", "grade-5", 3338, 17, 13],
  ["3/8-16", "grade-5", 4950, 31, 23],
  ["7/16-14", "grade-5", 6788, 50, 37],
  ["1/2-13", "grade-5", 9075, 76, 57],
  ["9/16-12", "grade-5", 11625, 109, 82],
  ["1/4-28", "grade-5", 2325, 10, 87, "lbf·in"],
  ["5/16-24", "grade-5", 3675, 19, 14],
  ["3/8-24", "grade-5", 5588, 35, 26],
  ["7/16-20", "grade-5", 7575, 55, 41],
  ["1/2-20", "grade-5", 10200, 85, 64],
  ["9/16-18", "grade-5", 12975, 122, 91],
  ["1/4-20", "grade-8", 2850, 12, 9],
  ["5/16-18", "grade-8", 4725, 25, 18],
  ["3/8-16", "grade-8", 6975, 44, 33],
  ["7/16-14", "grade-8", 9600, 70, 52],
  ["1/2-13", "grade-8", 12750, 106, 80],
  ["9/16-12", "grade-8", 16350, 153, 115],
  ["1/4-28", "grade-8", 3263, 14, 10],
  ["5/16-24", "grade-8", 5113, 27, 20],
  ["3/8-24", "grade-8", 7875, 49, 37],
  ["7/16-20", "grade-8", 10650, 78, 58],
  ["1/2-20", "grade-8", 14400, 120, 90],
  ["9/16-18", "grade-8", 18300, 172, 129],
];

const misprints: Record<number, Partial<Row>> = {
  5113: { disagrees: "0.75 · 0.0580 in² · 120 ksi = 5220; 5113 looks like a misprint for 5213" },
  3675: { disagrees: "0.75 · 4900, the standard's load, which is 4930 rounded down" },
};

const inchRows: Row[] = ifiRows.flatMap(([thread, strength, clamp, dry, plated, unit]) => {
  const inputs = (k: string) => ({ thread, class: strength, k });
  const shared = { figure: "torque", source: ifi, status: "read", rel: 0.006 } as const;
  return [
    ...rowsOf({ ...shared, result: "clamp load", unit: "lbf" }, [
      [inputs("0.2"), clamp, misprints[clamp]],
    ]),
    ...rowsOf({ ...shared, result: "torque", abs: 0.5 }, [
      [inputs("0.2"), dry, { unit: "lbf·ft" }],
      [inputs("0.15"), plated, { unit: unit ?? "lbf·ft" }],
    ]),
  ];
});

/** Dry and lubricated for 8.8, 10.9 and 12.9. */
const metricRows: [string, "lbf·in" | "lbf·ft", number[]][] = [
  ["M5", "lbf·in", [54, 41, 78, 59, 91, 68]],
  ["M6", "lbf·in", [92, 69, 133, 99, 156, 116]],
  ["M7", "lbf·in", [156, 116, 222, 167, 260, 195]],
  ["M8", "lbf·in", [225, 169, 333, 242, 377, 284]],
  ["M10", "lbf·ft", [37, 28, 53, 40, 62, 47]],
  ["M12", "lbf·ft", [65, 49, 93, 69, 108, 81]],
  ["M14", "lbf·ft", [104, 78, 148, 111, 173, 130]],
  ["M16", "lbf·ft", [161, 121, 230, 172, 269, 202]],
];

const metric: Row[] = metricRows.flatMap(([thread, unit, values]) =>
  rowsOf(
    {
      figure: "torque",
      result: "torque",
      unit,
      source: metricChart,
      status: "read",
      abs: 0.75,
      rel: 0.005,
    },
    values.map((value, index) => {
      const strength = ["8.8", "10.9", "12.9"][Math.floor(index / 2)] ?? "";
      const misprint = value === 333 && {
        disagrees: "misprint: K 0.20 gives 323, and 242 / 0.75 = 323",
      };
      return [
        { thread, class: strength, k: index % 2 === 0 ? "0.2" : "0.15" },
        value,
        { ...misprint },
      ];
    }),
  ),
);

const armyRows = rowsOf(
  {
    figure: "torque",
    result: "torque",
    unit: "lbf·ft",
    source: army,
    status: "read",
    abs: 0.5,
    rel: 0.005,
    note: "K and preload not printed; K 0.20 and 75 % of grade 5 taken",
  },
  [
    [{ thread: "1/4-20", class: "grade-5", k: "0.2" }, 8],
    [{ thread: "5/16-18", class: "grade-5", k: "0.2" }, 17],
    [{ thread: "5/16-24", class: "grade-5", k: "0.2" }, 19],
    [{ thread: "3/8-16", class: "grade-5", k: "0.2" }, 31],
    [{ thread: "3/8-24", class: "grade-5", k: "0.2" }, 35],
    [{ thread: "1/2-20", class: "grade-5", k: "0.2" }, 85],
    [{ thread: "9/16-12", class: "grade-5", k: "0.2" }, 110, { abs: 5, note: "to 10 lbf·ft" }],
    [{ thread: "9/16-18", class: "grade-5", k: "0.2" }, 120, { abs: 5, note: "to 10 lbf·ft" }],
  ],
);

const gradeTwo = rowsOf(
  {
    figure: "torque",
    result: "torque",
    unit: "lbf·ft",
    source: guide,
    status: "read",
    abs: 0.5,
    rel: 0.01,
  },
  [
    [{ thread: "1/4-20", class: "grade-2", k: "0.2" }, 66, { unit: "lbf·in" }],
    [{ thread: "1/4-20", class: "grade-2", k: "0.15" }, 49, { unit: "lbf·in" }],
    [{ thread: "5/16-18", class: "grade-2", k: "0.2" }, 11],
    [{ thread: "5/16-18", class: "grade-2", k: "0.15" }, 8],
    [{ thread: "5/16-24", class: "grade-2", k: "0.2" }, 12],
    [{ thread: "5/16-24", class: "grade-2", k: "0.15" }, 9],
    [{ thread: "3/8-24", class: "grade-2", k: "0.2" }, 23],
    [{ thread: "3/8-24", class: "grade-2", k: "0.15" }, 17],
  ],
);

const coefficient = (k: string) => `K ${k}, worked by hand on M10 8.8: K · 10 mm · 25 226 N`;

/** Each end of each range of K. */
const conditions = rowsOf(
  {
    figure: "torque",
    result: "torque",
    unit: "N·m",
    source: coefficient("0.20 plain, torque-tension chart"),
    status: "read",
    abs: 0.01,
  },
  [
    [{ thread: "M10", class: "8.8", condition: "plain" }, 50.45],
    [
      { thread: "M10", class: "8.8", condition: "plain" },
      75.68,
      { end: "to", source: coefficient("0.30 black finish, Shigley table 8-15") },
    ],
    [
      { thread: "M10", class: "8.8", condition: "zinc" },
      42.88,
      { source: coefficient("0.17 zinc, torque-tension chart") },
    ],
    [
      { thread: "M10", class: "8.8", condition: "zinc" },
      50.45,
      { end: "to", source: coefficient("0.20 zinc, Shigley table 8-15"), status: "memory" },
    ],
    [
      { thread: "M10", class: "8.8", condition: "lubricated" },
      37.84,
      { source: coefficient("0.15 lubricated, torque-tension chart") },
    ],
    [
      { thread: "M10", class: "8.8", condition: "lubricated" },
      45.41,
      { end: "to", source: coefficient("0.18 lubricated, Shigley table 8-15") },
    ],
    [
      { thread: "M10", class: "8.8" },
      25.23,
      { source: coefficient("0.10, Mechanical Fastening, Joining, and Assembly p. 85") },
    ],
    [
      { thread: "M10", class: "8.8" },
      75.68,
      { end: "to", source: coefficient("0.30, Mechanical Fastening, Joining, and Assembly p. 85") },
    ],
  ],
);

/** Tightening torques. */
export const torqueRows: readonly Row[] = [
  ...conditions,
  ...inchRows,
  ...metric,
  ...armyRows,
  ...gradeTwo,
];
