import { type Row, rowsOf } from "../row.js";

const faa = "FAA AC 43.13-1B (9/8/98), table 7-1, greatest torque, tension nut, bolt stress 90 ksi";
const scan = "Mechanical Fastening, Joining, and Assembly, p. 85";
const ifi =
  "IFI technical data N-12/N-16 as reprinted: 75 % of SAE J429 proof load, K 0.20 plain, 0.15 plated";

const load = (thread: string, torque: string, k?: string) => ({
  thread,
  class: "grade-8",
  torque,
  ...(k === undefined ? {} : { k }),
});

/** The stress of 90 ksi on Shigley's stress area, against the clamp load of the torque over all K met in practice: a wide check. */
const faaRows = rowsOf(
  {
    figure: "clamp-load",
    result: "clamp load",
    unit: "lbf",
    source: faa,
    status: "read",
    inside: true,
    note: "wide: the range over K 0.10 to 0.30 must hold 90 ksi on the stress area",
  },
  (
    [
      ["1/4-28", 100, 0.0364],
      ["5/16-24", 225, 0.058],
      ["3/8-24", 390, 0.0878],
      ["7/16-20", 840, 0.1187],
      ["1/2-20", 1100, 0.1599],
      ["9/16-18", 1600, 0.203],
      ["1/4-20", 75, 0.0318],
      ["5/16-18", 160, 0.0524],
      ["3/8-16", 275, 0.0775],
      ["7/16-14", 475, 0.1063],
      ["9/16-12", 1100, 0.182],
    ] as const
  ).map(([thread, torque, area]) => [load(thread, `${torque} lbf·in`), 90_000 * area]),
);

const shigleyExample = rowsOf(
  {
    figure: "clamp-load",
    result: "clamp load",
    unit: "lbf",
    source: "Shigley, Mechanical Engineering Design, 9th ed., example 8-3(b)",
    status: "memory",
    rel: 0.001,
  },
  [[{ thread: "3/4-16", class: "grade-5", torque: "3750 lbf·in", k: "0.2" }, 25_000]],
);

const scanRows = rowsOf(
  {
    figure: "clamp-load",
    result: "clamp load",
    unit: "lbf",
    source: scan,
    status: "read",
    rel: 0.002,
    note: "its worked 0.190 in bolt has no marked class; 1/4-20 stands in, the torque in proportion to the diameter",
  },
  (
    [
      [72.7, "0.3"],
      [60.6, "0.25"],
      [48.5, "0.2"],
      [24.2, "0.1"],
    ] as const
  ).map(([torque, k]) => [
    load("1/4-20", `${((torque * 0.25) / 0.19).toFixed(4)} lbf·in`, k),
    1275,
  ]),
);

const verdicts = rowsOf(
  { figure: "torque-check", result: "verdict", source: ifi, status: "read" },
  [
    [{ thread: "3/8-16", class: "grade-5", torque: "31 lbf·ft", k: "0.2" }, "within"],
    [{ thread: "1/2-13", class: "grade-8", torque: "106 lbf·ft", k: "0.2" }, "within"],
    [
      { thread: "3/8-16", class: "grade-5", torque: "44 lbf·ft", condition: "plain" },
      "within only where the threads rub enough",
      { note: "the grade 8 torque on a grade 5 bolt" },
    ],
  ],
);

const faint = rowsOf(
  {
    figure: "torque-check",
    result: "verdict",
    source: "ISO 898-1 proof load 130 000 N; 15 N·m makes 9400 N at most",
    status: "read",
  },
  [
    [
      { thread: "M16", class: "10.9", torque: "15 N·m" },
      "far below what this bolt is for: is the unit right?",
    ],
  ],
);

const shares = rowsOf(
  {
    figure: "torque-check",
    result: "share of proof load",
    unit: "%",
    source: ifi,
    status: "read",
    rel: 0.02,
    note: "torque printed to 1 lbf·ft",
  },
  [
    [{ thread: "3/8-16", class: "grade-5", torque: "31 lbf·ft", k: "0.2" }, 75],
    [{ thread: "7/16-20", class: "grade-8", torque: "78 lbf·ft", k: "0.2" }, 75],
    [{ thread: "1/2-13", class: "grade-8", torque: "80 lbf·ft", k: "0.15" }, 75],
  ],
);

/** Clamp loads that torques make, and whether the bolt bears them. */
export const clampRows: readonly Row[] = [
  ...faaRows,
  ...shigleyExample,
  ...scanRows,
  ...verdicts,
  ...faint,
  ...shares,
];
