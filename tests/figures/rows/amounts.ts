import { type Row, rowsOf } from "../row.js";

const coating = [
  ...rowsOf(
    {
      figure: "coverage",
      result: "spreading rate",
      unit: "m²/L",
      source: "coating worked examples and a coating maker's table",
      status: "read",
      abs: 0.05,
    },
    [
      [{ area: "1 m²", film: "125 µm", solids: "65" }, 5.2],
      [{ area: "1 m²", film: "125 µm", solids: "71" }, 5.68, { abs: 0.005 }],
      [{ area: "1 m²", film: "50 µm", solids: "50" }, 10],
      [{ area: "1 m²", film: "75 µm", solids: "60" }, 8],
    ],
  ),
  ...rowsOf(
    {
      figure: "coverage",
      result: "spreading rate",
      unit: "ft²/gal",
      source: "a spreading-rate note, 1604·VS/DFT",
      status: "read",
      rel: 0.0005,
    },
    [
      [{ area: "1 m²", film: "5 mil", solids: "65" }, 208.52],
      [{ area: "1 m²", film: "1 mil", solids: "100" }, 1604],
    ],
  ),
  ...rowsOf(
    {
      figure: "coverage",
      result: "wet film",
      unit: "µm",
      source: "coating practice, DFT·100/VS",
      status: "read",
      abs: 0.01,
    },
    [
      [{ area: "1 m²", film: "50 µm", solids: "50" }, 100],
      [{ area: "1 m²", film: "75 µm", solids: "60" }, 125],
    ],
  ),
];

const amounts = [
  ...rowsOf(
    {
      figure: "coverage",
      result: "amount",
      unit: "L",
      source: "worked by hand: 3 coats of 2 m² at 10 m²/L, 40 % lost",
      status: "practice",
      abs: 0.0001,
    },
    [[{ area: "2 m²", film: "50 µm", solids: "50", coats: "3", loss: "0.4" }, 1]],
  ),
  ...rowsOf(
    {
      figure: "bits-needed",
      result: "bits",
      unit: "1",
      source: "worked by hand, 85 welds at 20 a cutter",
      status: "practice",
    },
    [
      [{ holes: "85", life: "20" }, 6],
      [{ holes: "80", life: "20", spare: "0" }, 4],
    ],
  ),
  ...rowsOf(
    {
      figure: "gas-use",
      result: "gas",
      unit: "L",
      source: "worked by hand",
      status: "practice",
      abs: 0.001,
    },
    [
      [{ welds: "60", time: "3 s" }, 60],
      [{ welds: "30", time: "2 s", flow: "10 L/min", around: "1 s" }, 15],
    ],
  ),
  ...rowsOf(
    {
      figure: "plug-weld-wire",
      result: "wire",
      unit: "m",
      source: "worked by hand: 100 · 0.8 · (8/0.8)² · 1.5 / 0.9 mm",
      status: "practice",
      abs: 0.001,
    },
    [[{ welds: "100", hole: "8 mm", sheet: "0.8 mm", wire: "0.8 mm" }, 13.333]],
  ),
  ...rowsOf(
    {
      figure: "bead",
      result: "amount",
      unit: "mL",
      source: "worked by hand, π/4 · 0.6² · 400 mL",
      status: "practice",
      abs: 0.01,
    },
    [[{ length: "4 m", width: "6 mm" }, 113.1]],
  ),
  ...rowsOf(
    {
      figure: "bead",
      result: "cartridges",
      unit: "1",
      source: "worked by hand",
      status: "practice",
    },
    [[{ length: "12 m", width: "6 mm" }, 2]],
  ),
];

/** Coating and other amounts. */
export const amountRows: readonly Row[] = [...coating, ...amounts];
