import { type Row, rowsOf } from "../row.js";

const osha = "29 CFR 1910.133(a)(5), gas metal arc and flux cored arc welding";

const ansi = "ANSI Z49.1 / AWS F2.2, suggested";

const shade = [
  ...rowsOf(
    { figure: "lens-shade", result: "least shade", unit: "1", source: osha, status: "read" },
    [
      [{ current: "40 A" }, 7],
      [{ current: "60 A" }, 10],
      [{ current: "100 A" }, 10],
      [{ current: "200 A" }, 10],
      [{ current: "400 A" }, 10],
      [
        { current: "100 A" },
        12,
        {
          source: "29 CFR 1910.252(b)(2)(ii), shade guide, ferrous",
          disagrees: "a guide, darker than the least of 1910.133",
        },
      ],
    ],
  ),
  ...rowsOf(
    { figure: "lens-shade", result: "suggested shade", unit: "1", source: ansi, status: "memory" },
    [
      [{ current: "100 A" }, 11],
      [{ current: "200 A" }, 12],
      [{ current: "260 A" }, 14],
      [{ current: "400 A" }, 14],
    ],
  ),
];

const watch = [
  ...rowsOf(
    {
      figure: "fire-watch",
      result: "fire watch",
      unit: "min",
      source: "29 CFR 1910.252(a)(2)(iii)(B)",
      status: "read",
    },
    [
      [{ code: "osha" }, 30],
      [{ code: "osha-shipyard" }, 30, { source: "29 CFR 1915.504(c)" }],
      [{ code: "nfpa-51b-2014" }, 30, { source: "NFPA 51B-2014" }],
      [{ code: "nfpa-51b-2019" }, 60, { source: "NFPA 51B-2019" }],
      [{}, 60, { source: "a Scottish fire service, stop 60 min before leaving" }],
      [
        {},
        30,
        {
          source: "UK guidance in a trade magazine, least",
          disagrees:
            "60 min is our safe default; the same guidance says 60 where ignition is slow to show",
        },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "fire-watch",
      result: "clear radius",
      unit: "m",
      source: "29 CFR 1910.252(a)(2)(vii), 35 ft (10.7 m)",
      status: "read",
      abs: 0.05,
    },
    [
      [{ code: "osha" }, 10.7],
      [{}, 10.7],
      [{ code: "nfpa-51b-2014" }, 10.7, { source: "NFPA 51B, 35 ft" }],
      [{ code: "osha-shipyard" }, 10.7, { source: "29 CFR 1915.504(b)" }],
      [
        { code: "nfpa-51b-2019" },
        11,
        {
          source: "NFPA 51B, 35 ft (11 m)",
          status: "memory",
          abs: 0.4,
          note: "the code rounds up",
        },
      ],
    ],
  ),
  ...rowsOf(
    {
      figure: "fire-watch",
      result: "clear radius in m",
      unit: "m",
      source: "NFPA 51B, 35 ft (11 m)",
      status: "memory",
    },
    [
      [{}, 11],
      [{ code: "nfpa-51b-2019" }, 11],
    ],
  ),
];

/** Lens shade and fire watch. */
export const safetyRows: readonly Row[] = [...shade, ...watch];
