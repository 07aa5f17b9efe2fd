import fc from "fast-check";

/** What one part of a made-up car is like. */
export interface PartSeed {
  screws: number;
  clips: number;
  /** One-use clips. */
  plug: boolean;
  hook: boolean;
  critical: boolean;
  /** Which parts with a lower number it covers, by bit. */
  hides: number;
  /** What was found of its screws: missing, too many, damaged. */
  found: "as made" | "missing" | "extra" | "damaged";
  move: boolean;
  check: "none" | "anybody" | "independent";
}

/** A whole made-up job: its parts, and the work on what lies under the last of them. */
export interface Seed {
  parts: PartSeed[];
  job: "strip" | "paint" | "weld" | "trial";
  finish: string[];
  welds: number;
  structural: boolean;
  hiddenJoint: boolean;
  brace: boolean;
  reading: boolean;
  everyJob: boolean;
  easy: boolean;
  /** Which steps of the recipe its writer forgot; mostly none. */
  forgets: number[];
  /** The steps of the recipe at which the writer says that the night may come. */
  nights: number[];
}

const sometimes = fc.integer({ min: 0, max: 3 }).map((dice) => dice === 0);

const part: fc.Arbitrary<PartSeed> = fc.record({
  screws: fc.integer({ min: 0, max: 3 }),
  clips: fc.constantFrom(0, 0, 1, 2),
  plug: sometimes,
  hook: sometimes,
  critical: sometimes,
  hides: fc.nat(7),
  found: fc.constantFrom("as made", "as made", "as made", "missing", "extra", "damaged"),
  move: sometimes,
  check: fc.constantFrom("none", "anybody", "independent", "independent"),
});

/** Random jobs; about one recipe in three has a step that its writer forgot. */
export const seeds: fc.Arbitrary<Seed> = fc.record({
  parts: fc.array(part, { minLength: 1, maxLength: 4 }),
  job: fc.constantFrom("strip", "paint", "weld", "weld", "trial"),
  finish: fc.constantFrom<string[]>([], ["primed"], ["primed", "painted"]),
  welds: fc.integer({ min: 1, max: 4 }),
  structural: fc.boolean(),
  hiddenJoint: fc.boolean(),
  brace: fc.boolean(),
  reading: fc.boolean(),
  everyJob: fc.boolean(),
  easy: sometimes,
  forgets: fc.oneof(
    { weight: 2, arbitrary: fc.constant<number[]>([]) },
    { weight: 1, arbitrary: fc.array(fc.nat(20), { minLength: 1, maxLength: 2 }) },
  ),
  nights: fc.oneof(
    { weight: 3, arbitrary: fc.constant<number[]>([]) },
    { weight: 1, arbitrary: fc.array(fc.nat(20), { minLength: 1, maxLength: 1 }) },
  ),
});
