/** One row of the class A schedule: thinnest outside sheet (in), minimum shear (lbf), nugget diameter, minimum pitch and overlap (in). */
type Row = readonly [sheet: number, shear: number, nugget: number, pitch: number, overlap: number];

/** Optimum conditions for spot welds in low-carbon steel SAE 1010, ultimate strength 90 ksi and below, in the layout of the RWMA class A table. */
const rows: readonly Row[] = [
  [0.01, 130, 0.113, 1 / 4, 3 / 8],
  [0.021, 300, 0.139, 3 / 8, 7 / 16],
  [0.031, 530, 0.161, 1 / 2, 7 / 16],
  [0.04, 812, 0.181, 3 / 4, 1 / 2],
  [0.05, 1195, 0.21, 7 / 8, 9 / 16],
  [0.062, 1717, 0.231, 1, 5 / 8],
  [0.078, 2365, 0.268, 9 / 8, 11 / 16],
  [0.094, 3054, 0.304, 5 / 4, 3 / 4],
  [0.109, 3672, 0.338, 21 / 16, 13 / 16],
  [0.125, 4300, 0.375, 3 / 2, 7 / 8],
];

/** What the class A schedule asks for a sheet, in mm and N. */
export interface SpotWeld {
  shear: number;
  nugget: number;
  pitch: number;
  overlap: number;
}

/** The schedule for a sheet in mm: shear and nugget between the rows beside it, pitch and overlap from the thicker one; nothing outside the table. */
export function spotWeldOf(millimetres: number): SpotWeld | undefined {
  const sheet = millimetres / 25.4;
  const next = rows.findIndex(([thickness]) => thickness >= sheet - 1e-9);
  const above = rows[next];
  if (above === undefined) return undefined;
  const below = rows[next - 1] ?? above;
  const part = above === below ? 1 : (sheet - below[0]) / (above[0] - below[0]);
  const between = (column: 1 | 2): number => below[column] + part * (above[column] - below[column]);
  return {
    shear: between(1) * 4.4482216152605,
    nugget: between(2) * 25.4,
    pitch: above[3] * 25.4,
    overlap: above[4] * 25.4,
  };
}

/** Nominal shear strength of one spot weld in N for a sheet in mm: 144 · t^1.47 kip with t in inch, AISI S100-07 E2.6, from memory. */
export function nominalSpotShearOf(millimetres: number): number {
  return 144 * (millimetres / 25.4) ** 1.47 * 4448.2216152605;
}
