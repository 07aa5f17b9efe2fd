/** What a verb acts on. */
export type ObjectKind =
  | "part"
  | "fixing"
  | "join"
  | "supply"
  | "surface"
  | "joint"
  | "function"
  | "reading"
  | "hold"
  | "thing";

/** How a verb changes the state of its object; `prove/apply.ts` gives each effect its meaning. */
export type Effect =
  | "out"
  | "in"
  | "leave-out"
  | "part-join"
  | "make-join"
  | "off"
  | "on"
  | "cut-off"
  | "fit-new"
  | "leave-off"
  | "ease"
  | "settle"
  | "isolate"
  | "restore"
  | "begin"
  | "end"
  | "try-in"
  | "take-out"
  | "move"
  | "prove"
  | "release"
  | "work";

/** One row of the closed table of verbs. */
export interface Verb {
  effect: Effect;
  on: readonly ObjectKind[];
  /** The verb that takes it back; both rows name each other. */
  pair?: string;
  /** The state word that a verb gives its object, as `needs` writes it. */
  gives?: string;
  kinds?: readonly WorkKind[];
}

/** Of work: it makes sparks or a flame at the car, it leaves something wet, it cannot be undone, it records. */
export type WorkKind = "hot" | "wet" | "destroys" | "records";

const kinds: Record<string, readonly WorkKind[]> = {
  weld: ["hot"],
  close: ["hot"],
  tack: ["hot"],
  dress: ["hot"],
  pilot: ["hot"],
  drill: ["hot", "destroys"],
  prime: ["wet"],
  paint: ["wet"],
  seal: ["wet"],
  coat: ["wet"],
  separate: ["destroys"],
  measure: ["records"],
  photograph: ["records"],
  mark: ["records"],
};

const anything: readonly ObjectKind[] = [
  "part",
  "surface",
  "joint",
  "reading",
  "thing",
  "function",
];

function pair(off: string, back: string, effects: [Effect, Effect], on: ObjectKind): Table {
  return {
    [off]: { effect: effects[0], on: [on], pair: back },
    [back]: { effect: effects[1], on: [on], pair: off },
  };
}

function work(words: Record<string, string>): Table {
  const rows = Object.entries(words).map(([verb, gives]) => {
    const row: Verb = { effect: "work", on: anything, gives, kinds: kinds[verb] ?? [] };
    return [verb, row] as const;
  });
  return Object.fromEntries(rows);
}

type Table = Record<string, Verb>;

/** Every verb that a recipe or a plan may use. */
export const verbs: Readonly<Table> = {
  ...pair("undo", "do-up", ["out", "in"], "fixing"),
  ...pair("unclip", "clip-in", ["out", "in"], "fixing"),
  ...pair("pull-out", "press-in", ["out", "in"], "fixing"),
  ...pair("drill-out", "rivet", ["out", "in"], "fixing"),
  ...pair("unplug", "plug-in", ["part-join", "make-join"], "join"),
  ...pair("unhook", "hook-on", ["part-join", "make-join"], "join"),
  ...pair("lift-out", "put-in", ["off", "on"], "part"),
  ...pair("fold-back", "lay-back", ["ease", "settle"], "part"),
  ...pair("ease", "settle", ["ease", "settle"], "part"),
  ...pair("tie-aside", "free", ["ease", "settle"], "part"),
  ...pair("isolate", "restore", ["isolate", "restore"], "supply"),
  ...pair("drain", "fill", ["isolate", "restore"], "supply"),
  ...pair("try-in", "take-out", ["try-in", "take-out"], "part"),
  ...pair("open", "shut", ["begin", "end"], "thing"),
  ...pair("raise", "lower", ["begin", "end"], "thing"),
  ...pair("brace", "unbrace", ["begin", "end"], "thing"),
  ...pair("shield", "unshield", ["begin", "end"], "thing"),
  ...pair("set-out", "clear-away", ["begin", "end"], "thing"),
  "leave-out": { effect: "leave-out", on: ["fixing"] },
  "leave-off": { effect: "leave-off", on: ["part"] },
  "cut-out": { effect: "cut-off", on: ["part"], kinds: ["destroys"] },
  "fit-new": { effect: "fit-new", on: ["part"] },
  move: { effect: "move", on: ["part", "thing"] },
  try: { effect: "prove", on: ["function"] },
  hold: { effect: "release", on: ["hold"] },
  decide: { effect: "release", on: ["hold"] },
  witness: { effect: "release", on: ["hold"] },
  ...work({
    apply: "applied",
    bare: "bare",
    bore: "bored",
    centre: "centred",
    clamp: "clamped",
    clean: "cleaned",
    close: "closed",
    coat: "coated",
    compare: "compared",
    tally: "tallied",
    deburr: "deburred",
    dress: "dressed",
    drill: "drilled",
    find: "found",
    grease: "greased",
    inspect: "inspected",
    level: "level",
    "look-at": "seen",
    mark: "marked",
    measure: "measured",
    "offer-up": "offered",
    paint: "painted",
    pause: "paused",
    peel: "peeled",
    permit: "permitted",
    photograph: "photographed",
    pilot: "piloted",
    prepare: "prepared",
    prime: "primed",
    punch: "punched",
    remove: "removed",
    scrape: "scraped",
    seal: "sealed",
    separate: "separated",
    sign: "signed",
    straighten: "straight",
    sweep: "swept",
    tack: "tacked",
    test: "tested",
    watch: "watched",
    wax: "waxed",
    weld: "welded",
    wipe: "wiped",
  }),
};

/** The state words of `needs` that no work verb gives. */
export const stateWords = [
  "off",
  "on",
  "eased",
  "live",
  "isolated",
  "released",
  "parted",
  "joined",
  "braced",
  "shielded",
  "raised",
  "opened",
  "set",
];

/** What a verb does to its object; nothing where there is none or the table has no such verb. */
export function effectOf(verb = ""): Effect | undefined {
  return verbs[verb]?.effect;
}

/** Whether a verb does work of this kind; drilling at the car is hot, boring at a bench away from it is not. */
export function isOf(verb: string, kind: WorkKind): boolean {
  return verbs[verb]?.kinds?.includes(kind) ?? false;
}

/** Whether work leaves solvent in the air. */
export function givesVapour(verb: string): boolean {
  return isOf(verb, "wet") || ["wax", "wipe"].includes(verb);
}

/** Whether a step puts a part in its place. */
export function putsOn(step: { verb: string }): boolean {
  return ["on", "fit-new", "settle"].includes(effectOf(step.verb) ?? "");
}
