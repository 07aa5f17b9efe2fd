import type { PartSeed, Seed } from "./made.js";

type Entries = Record<string, unknown>;

/** The range of a made-up job: what holds, hides and proves what. */
export function rangeOf(seed: Seed): object {
  const plugs = seed.parts.some(({ plug }) => plug);
  const { structural, welds, job } = seed;
  return {
    range: "made",
    name: "Made",
    about: "made up by a test",
    invented: true,
    options: {},
    zones: { cabin: "cabin" },
    kinds: {
      screw: { name: "screw", plural: "screws" },
      clip: { name: "clip", plural: "clips", "one-use": true },
    },
    supplies: { power: { name: "power" } },
    parts: partsOf(seed),
    surfaces: { floor: { name: "floor", zone: "cabin", finish: seed.finish } },
    joints: { seam: { name: "seam", zone: "cabin", welds, structural } },
    ...(plugs ? { functions: functionsOf(seed.parts) } : {}),
    ...(job === "weld" ? rulesOf(seed) : {}),
  };
}

function partsOf(seed: Seed): Entries {
  const parts: Entries = {
    box: {
      name: "box",
      zone: "cabin",
      "held-by": { "box-screw": { kind: "screw", count: 1, where: "on top" } },
    },
  };
  for (const [i, one] of seed.parts.entries()) parts[`p${i}`] = partOf(seed, one, i);
  if (seed.easy)
    parts["flap"] = {
      name: "flap",
      zone: "cabin",
      "held-by": {
        "flap-screw": { kind: "screw", count: 2, where: "in front" },
        "flap-pin": { kind: "screw", count: 1, where: "behind" },
      },
      "eased-by": ["flap-screw"],
      hides: ["p0", "floor"],
    };
  if (seed.job === "weld")
    parts["panel"] = { name: "panel", zone: "cabin", "welded-by": ["seam"], hides: ["floor"] };
  return parts;
}

function partOf(seed: Seed, one: PartSeed, i: number): object {
  const below = [
    "floor",
    ...(seed.hiddenJoint ? ["seam"] : []),
    ...(seed.job === "weld" ? ["panel"] : []),
  ];
  const hides = [...lower(one, i).map((j) => `p${j}`), ...(i === 0 ? below : [])];
  const held = {
    ...(one.screws > 0 ? { [`s${i}`]: { kind: "screw", count: one.screws, where: "here" } } : {}),
    ...(one.clips > 0 ? { [`c${i}`]: { kind: "clip", count: one.clips, where: "there" } } : {}),
  };
  return {
    name: `part ${i}`,
    zone: "cabin",
    "held-by": held,
    hides,
    ...(one.critical ? { critical: "it holds somebody" } : {}),
    ...(one.plug ? { plugs: { [`w${i}`]: { name: `plug ${i}`, supply: "power" } } } : {}),
    ...(one.hook ? { hooks: { [`h${i}`]: { name: `hook ${i}` } } } : {}),
  };
}

/** The numbers of the parts that a part covers. */
export function lower({ hides }: PartSeed, i: number): number[] {
  return Array.from({ length: i }, (_, j) => j).filter((j) => (hides >> j) & 1);
}

function functionsOf(parts: readonly PartSeed[]): Entries {
  const rows = parts.flatMap(({ plug }, i) =>
    plug ? [[`f${i}`, { name: `function ${i}`, proves: [`w${i}`], supply: "power" }] as const] : [],
  );
  return Object.fromEntries(rows);
}

function rulesOf({ brace, reading }: Seed): object {
  return {
    "hot-work": {
      needs: ["power isolated", "p0 off", "extinguisher set", "air tested", "behind seen"],
      watch: minutes(60),
    },
    structural: {
      needs: ["stands set", ...(brace ? ["strut braced"] : [])],
      compare: reading ? ["gap"] : [],
    },
  };
}

/** A time with a source, as a recipe writes it. */
export function minutes(value: number): object {
  return {
    kind: "time",
    value,
    unit: "min",
    source: { publication: "made up by a test", section: "none" },
  };
}
