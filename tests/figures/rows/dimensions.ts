import { type Row, rowsOf } from "../row.js";

const iso = "ISO 2768-1, table 1";

const sizes: [string, string, number][] = [
  ["2 mm", "f", 0.05],
  ["5 mm", "f", 0.05],
  ["20 mm", "f", 0.1],
  ["100 mm", "f", 0.15],
  ["700 mm", "f", 0.3],
  ["1500 mm", "f", 0.5],
  ["2 mm", "m", 0.1],
  ["5 mm", "m", 0.1],
  ["20 mm", "m", 0.2],
  ["700 mm", "m", 0.8],
  ["1500 mm", "m", 1.2],
  ["3000 mm", "m", 2],
  ["2 mm", "c", 0.2],
  ["5 mm", "c", 0.3],
  ["20 mm", "c", 0.5],
  ["100 mm", "c", 0.8],
  ["300 mm", "c", 1.2],
  ["700 mm", "c", 2],
  ["1500 mm", "c", 3],
  ["3000 mm", "c", 4],
  ["5 mm", "v", 0.5],
  ["20 mm", "v", 1],
  ["100 mm", "v", 1.5],
  ["300 mm", "v", 2.5],
  ["700 mm", "v", 4],
  ["1500 mm", "v", 6],
  ["3000 mm", "v", 8],
];

const tolerances = [
  ...rowsOf(
    {
      figure: "general-tolerance",
      result: "tolerance ±",
      unit: "mm",
      source: iso,
      status: "read",
      abs: 0.001,
    },
    sizes.map(([size, letter, value]) => [{ size, class: letter }, value]),
  ),
  ...rowsOf(
    {
      figure: "general-tolerance",
      result: "tolerance ±",
      unit: "mm",
      source: iso,
      status: "memory",
      abs: 0.001,
    },
    [
      [{ size: "300 mm", class: "f" }, 0.2],
      [{ size: "100 mm", class: "m" }, 0.3],
      [{ size: "300 mm", class: "m" }, 0.5],
    ],
  ),
  ...rowsOf(
    {
      figure: "general-tolerance",
      result: "tolerance ±",
      unit: "mm",
      source: "a copy with a DIN heading",
      status: "read",
      abs: 0.001,
    },
    [
      [{ size: "2 mm", class: "c" }, 0.15, { disagrees: "ISO 2768-1 prints 0.2" }],
      [{ size: "5 mm", class: "c" }, 0.2, { disagrees: "ISO 2768-1 prints 0.3" }],
    ],
  ),
];

const doubt = rowsOf(
  {
    figure: "diagonals",
    result: "uncertainty of the difference",
    unit: "mm",
    source: "two readings of 1 mm each, root of the sum of squares, worked by hand",
    status: "practice",
    abs: 0.001,
  },
  [[{ first: "1300 mm", second: "1301 mm" }, 1.414]],
);

const undecided = "undecided: measure again, more surely";

const readings = [
  ...rowsOf(
    {
      figure: "sides",
      result: "verdict",
      source: "guard band of ISO 14253-1, worked by hand",
      status: "memory",
    },
    [
      [{ left: "4 mm", right: "4.5 mm", tolerance: "1 mm", uncertainty: "0.2 mm" }, "good"],
      [{ left: "4 mm", right: "4.8 mm", tolerance: "1 mm", uncertainty: "0.2 mm" }, undecided],
      [{ left: "4 mm", right: "5.1 mm", tolerance: "1 mm", uncertainty: "0.2 mm" }, undecided],
      [{ left: "4 mm", right: "5.5 mm", tolerance: "1 mm", uncertainty: "0.2 mm" }, "bad"],
    ],
  ),
  ...rowsOf(
    {
      figure: "reading",
      result: "verdict",
      source: "guard band of ISO 14253-1, worked by hand",
      status: "memory",
    },
    [
      [{ nominal: "372 mm", measured: "372.4 mm", tolerance: "1.5 mm" }, "good"],
      [{ nominal: "372 mm", measured: "373 mm", tolerance: "1.5 mm" }, undecided],
      [{ nominal: "372 mm", measured: "375 mm", tolerance: "1.5 mm" }, "bad"],
    ],
  ),
];

const geometry = [
  ...rowsOf(
    {
      figure: "square",
      result: "diagonal",
      unit: "ft",
      source: "carpentry reference, 30 by 40 ft",
      status: "read",
      abs: 0.0001,
    },
    [[{ length: "40 ft", width: "30 ft" }, 50]],
  ),
  ...rowsOf(
    {
      figure: "square",
      result: "diagonal",
      unit: "mm",
      source: "Pythagorean triples",
      status: "practice",
      abs: 0.0001,
    },
    [
      [{ length: "800 mm", width: "600 mm" }, 1000],
      [{ length: "1200 mm", width: "500 mm" }, 1300],
    ],
  ),
  ...rowsOf(
    {
      figure: "diagonals",
      result: "verdict",
      source:
        "±3 mm, an inter-industry collision-training body; guard band of ISO 14253-1, from memory",
      status: "memory",
    },
    [
      [{ first: "1300 mm", second: "1301 mm", uncertainty: "1 mm" }, "good"],
      [{ first: "1300 mm", second: "1301.5 mm" }, "good"],
      [
        { first: "1300 mm", second: "1303 mm", uncertainty: "1 mm" },
        "undecided: measure again, more surely",
      ],
      [{ first: "1300 mm", second: "1305 mm", uncertainty: "1 mm" }, "bad"],
      [{ first: "1300 mm", second: "1303 mm", uncertainty: "0 mm" }, "good"],
    ],
  ),
];

/** Tolerances, squareness and diagonals. */
export const dimensionRows: readonly Row[] = [...tolerances, ...doubt, ...readings, ...geometry];
