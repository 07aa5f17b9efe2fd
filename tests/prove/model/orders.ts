import type { Seed } from "./made.js";

export const plain = {
  screws: 0,
  clips: 0,
  plug: false,
  hook: false,
  critical: false,
  hides: 0,
  found: "as made",
  move: false,
  check: "none",
} as const satisfies Seed["parts"][number];

export const bench: Seed = {
  parts: [plain],
  job: "strip",
  finish: [],
  welds: 1,
  structural: false,
  hiddenJoint: false,
  brace: false,
  reading: false,
  everyJob: false,
  easy: false,
  forgets: [],
  nights: [],
};

/** Jobs so small that every order of their steps can be tried: at most seven steps each. */
export const tiny: readonly Seed[] = [
  { ...bench, parts: [{ ...plain, screws: 2, clips: 1 }] },
  {
    ...bench,
    parts: [
      { ...plain, screws: 1 },
      { ...plain, hides: 1 },
    ],
  },
  { ...bench, parts: [{ ...plain, screws: 2, critical: true, check: "independent" }] },
  { ...bench, parts: [{ ...plain, screws: 2, found: "extra" }] },
  { ...bench, parts: [{ ...plain, screws: 1, hook: true }] },
  { ...bench, parts: [plain, { ...plain, hides: 1 }, { ...plain, hides: 3 }] },
  { ...bench, job: "trial", finish: ["primed"], forgets: [1, 3, 5, 7] },
  { ...bench, job: "paint", finish: ["primed"], forgets: [0, 2, 4] },
];

/** Every order of a list, by exchanging neighbours of a shorter order. */
export function ordersOf<T>(list: readonly T[]): T[][] {
  const [first, ...rest] = list;
  if (first === undefined) return [[]];
  return ordersOf(rest).flatMap((order) => list.map((_, i) => order.toSpliced(i, 0, first)));
}
