import type { PartSeed, Seed } from "./made.js";
import { lower, minutes } from "./made-range.js";

type Steps = object[];

/** The recipes of a made-up job. */
export function recipesOf(seed: Seed): object[] {
  const parts = seed.parts.map((one, i) => partRecipe(seed, one, i));
  const box = {
    recipe: "box",
    name: "Box",
    strips: "box",
    strip: [{ isolate: "power" }, { undo: "box-screw" }, { "lift-out": "box" }],
    refit: "reversed",
  };
  const flap = {
    recipe: "flap",
    name: "Flap",
    eases: "flap",
    strip: [{ undo: "flap-screw" }, { "fold-back": "flap" }],
    refit: "reversed",
  };
  const job = seed.job === "strip" ? [] : [repair(seed)];
  return [
    ...parts,
    box,
    ...(seed.easy ? [flap] : []),
    ...(seed.everyJob ? [everyJob] : []),
    ...job,
  ];
}

const everyJob = {
  recipe: "every-job",
  name: "Every job",
  "every-job": true,
  things: { car: "car", "last-line": "last line" },
  prepare: [{ photograph: "car" }],
  close: [{ sweep: "car" }, { sign: "last-line" }],
};

function partRecipe(seed: Seed, one: PartSeed, i: number): object {
  const over = seed.parts.flatMap((other, j) => (lower(other, j).includes(i) ? [`p${j}`] : []));
  const strip = stripOf(one, i);
  const role = one.check === "independent" ? "inspector" : "foreman";
  return {
    recipe: `r${i}`,
    name: `Part ${i}`,
    strips: `p${i}`,
    "needs-off": over,
    ...(seed.easy && i === 0 ? { "needs-eased": ["flap"] } : {}),
    ...(one.plug ? { "needs-isolated": ["power"] } : {}),
    strip: i === 0 ? forget({ ...seed, nights: [] }, strip) : strip,
    refit: "reversed",
    ...(one.check === "none" ? {} : { check: [{ hold: `seen${i}`, role }] }),
    ...(one.plug ? { close: [{ try: `f${i}` }] } : {}),
  };
}

function stripOf(one: PartSeed, i: number): Steps {
  const needs = one.move && one.screws > 0 ? { needs: [`p${i} back`] } : {};
  return [
    ...(one.move ? [{ move: `p${i}`, to: "back" }] : []),
    ...(one.screws > 0 ? [{ undo: `s${i}`, ...needs }] : []),
    ...(one.clips > 0 ? [{ unclip: `c${i}` }] : []),
    ...(one.plug ? [{ unplug: `w${i}` }] : []),
    ...(one.hook ? [{ unhook: `h${i}`, ...(one.screws > 0 ? { needs: [`s${i} off`] } : {}) }] : []),
    { "lift-out": `p${i}` },
  ];
}

/** Leaves out what the writer of the recipe forgot, and puts in the night stops where he wants them. */
function forget({ forgets, nights }: Seed, steps: Steps): Steps {
  const kept = steps.filter((_, i) => !forgets.includes(i) || steps.length === 1);
  return kept.flatMap((step, i) =>
    nights.includes(i) ? [step, { pause: `stop-${i}`, night: true }] : [step],
  );
}

function repair(seed: Seed): object {
  const weld = seed.job === "weld";
  const names = [
    "stands",
    "strut",
    "gap",
    "extinguisher",
    "fire",
    "test-piece",
    "mat",
    "air",
    "behind",
  ];
  return {
    recipe: "work",
    name: "Work",
    repairs: "cabin",
    "needs-off": ["p0"],
    ...(weld ? { "needs-isolated": ["power"] } : {}),
    things: Object.fromEntries(names.map((name) => [name, name])),
    ...(weld ? before(seed) : {}),
    work: forget(seed, { paint, weld: welding, trial, strip: paint }[seed.job](seed)),
    ...(weld ? after(seed) : {}),
  };
}

function before({ brace, reading }: Seed): object {
  return {
    prepare: [{ "set-out": "stands" }, ...(brace ? [{ brace: "strut" }] : [])],
    record: [{ mark: "stands" }, ...(reading ? [{ measure: "gap" }] : [])],
  };
}

function after({ brace, reading }: Seed): object {
  return {
    close: [
      ...(reading ? [{ compare: "gap" }] : []),
      ...(brace ? [{ unbrace: "strut" }] : []),
      { "clear-away": "stands" },
    ],
  };
}

function paint({ finish }: Seed): Steps {
  return [
    { shield: "mat" },
    { bare: "floor" },
    { wipe: "floor" },
    ...(finish.includes("primed") ? [{ prime: "floor", wait: minutes(10) }] : []),
    ...(finish.includes("painted") ? [{ paint: "floor", wait: minutes(20) }] : []),
    { unshield: "mat" },
    { hold: "floor-seen", role: "foreman", "looks-at": ["floor"] },
  ];
}

function trial(seed: Seed): Steps {
  return [{ "try-in": "p0" }, { inspect: "mat" }, { "take-out": "p0" }, ...paint(seed)];
}

function welding({ welds }: Seed): Steps {
  return [
    { "set-out": "extinguisher" },
    { prime: "mat", wait: minutes(10) },
    { test: "air" },
    { "look-at": "behind" },
    { drill: "seam", count: welds, of: "welds" },
    { separate: "seam" },
    { "cut-out": "panel" },
    { close: "seam" },
    { "fit-new": "panel" },
    { peel: "test-piece" },
    { hold: "piece-seen", role: "foreman", "looks-at": ["test-piece"] },
    { weld: "seam", count: welds, of: "welds" },
    { watch: "fire", wait: minutes(60) },
    { "clear-away": "extinguisher" },
    { hold: "seam-seen", role: "inspector", "looks-at": ["seam"] },
  ];
}
