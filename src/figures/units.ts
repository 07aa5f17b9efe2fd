const inch = 25.4;
const foot = 12 * inch;
const pound = 0.45359237;
const gravity = 9.80665;
const poundForce = pound * gravity;
const gallon = (231 * inch ** 3) / 1000;

/** Every unit: what it measures, how many of the base unit it holds (exact, from the definitions in NIST SP 811 app. B), and its zero in the base unit where that is not 0. */
export const units = {
  mm: ["length", 1],
  µm: ["length", 0.001],
  cm: ["length", 10],
  m: ["length", 1000],
  mil: ["length", inch / 1000],
  in: ["length", inch],
  ft: ["length", foot],
  "mm²": ["area", 1],
  "cm²": ["area", 100],
  "m²": ["area", 1e6],
  "in²": ["area", inch ** 2],
  "ft²": ["area", foot ** 2],
  mL: ["volume", 1],
  L: ["volume", 1000],
  "fl oz": ["volume", gallon / 128],
  gal: ["volume", gallon],
  g: ["mass", 1],
  kg: ["mass", 1000],
  oz: ["mass", (1000 * pound) / 16],
  lb: ["mass", 1000 * pound],
  N: ["force", 1],
  kN: ["force", 1000],
  lbf: ["force", poundForce],
  kip: ["force", 1000 * poundForce],
  "N·m": ["torque", 1],
  "lbf·ft": ["torque", poundForce * 0.3048],
  "lbf·in": ["torque", poundForce * 0.0254],
  "kgf·m": ["torque", gravity],
  MPa: ["pressure", 1],
  psi: ["pressure", poundForce / inch ** 2],
  ksi: ["pressure", (1000 * poundForce) / inch ** 2],
  bar: ["pressure", 0.1],
  kPa: ["pressure", 0.001],
  s: ["time", 1],
  min: ["time", 60],
  h: ["time", 3600],
  "°C": ["temperature", 1],
  "°F": ["temperature", 5 / 9, -160 / 9],
  A: ["current", 1],
  V: ["voltage", 1],
  Ω: ["resistance", 1],
  lx: ["light", 1],
  rpm: ["turning", 1],
  "m/min": ["speed", 1],
  "cm/min": ["speed", 0.01],
  "ft/min": ["speed", foot / 1000],
  "in/min": ["speed", inch / 1000],
  "L/min": ["flow", 1],
  "ft³/h": ["flow", foot ** 3 / 1e6 / 60],
  "m²/L": ["spreading rate", 1],
  "ft²/gal": ["spreading rate", foot ** 2 / 1e6 / (gallon / 1000)],
  "kg/h": ["deposition", 1],
  "lb/h": ["deposition", pound],
  "%": ["share", 1],
  "1": ["count", 1],
} as const;

/** A unit's name as it is printed. */
export type Unit = keyof typeof units;

/** What a unit measures. */
export type Dimension = (typeof units)[Unit][0];

/** The units of one dimension. */
export type UnitOf<D extends Dimension> = {
  [U in Unit]: (typeof units)[U][0] extends D ? U : never;
}[Unit];

/** Other ways in which a unit is written in the trade, in small letters and without signs between. */
export const otherNames: Readonly<Record<string, Unit>> = {
  um: "µm",
  '"': "in",
  inch: "in",
  inches: "in",
  floz: "fl oz",
  nm: "N·m",
  lbft: "lbf·ft",
  ftlb: "lbf·ft",
  ftlbf: "lbf·ft",
  lbin: "lbf·in",
  inlb: "lbf·in",
  inlbf: "lbf·in",
  kgm: "kgf·m",
  mkg: "kgf·m",
  lbs: "lb",
  sfm: "ft/min",
  "1/min": "rpm",
  amp: "A",
  c: "°C",
  f: "°F",
};
