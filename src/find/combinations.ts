import type { RangeFile } from "../model/generated/range.js";

/** Sets of options, and how many more there are beyond the most that were asked for. */
export interface Combinations {
  sets: Record<string, string>[];
  left: number;
}

/** Every combination of the values of these options, up to a most; the first option changes slowest. */
export function combinationsOf(
  range: RangeFile,
  options: readonly string[],
  most: number,
): Combinations {
  const values = options.map((option) => Object.keys(range.options[option]?.values ?? {}));
  const total = values.reduce((product, one) => product * one.length, 1);
  const count = Math.min(total, most);
  const sets = Array.from({ length: count }, (_, n) => {
    let rest = n;
    const picked = values.map((_one, i) => {
      const own = values[values.length - 1 - i] ?? [];
      const value = own[rest % own.length] ?? "";
      rest = Math.floor(rest / own.length);
      return [options[options.length - 1 - i] ?? "", value] as const;
    });
    return Object.fromEntries(picked.reverse());
  });
  return { sets, left: total - count };
}

/** The fewest option values that all the failing sets have and that no other set has in full. */
export function smallestCause(
  failing: readonly Record<string, string>[],
  sets: readonly Record<string, string>[],
): Record<string, string> {
  const [first = {}] = failing;
  const bad = new Set(failing);
  const pairs = Object.entries(first);
  for (let size = 0; size < pairs.length; size++)
    for (const part of subsets(pairs, size))
      if (
        sets.every((set) => bad.has(set) || part.some(([option, value]) => set[option] !== value))
      )
        return Object.fromEntries(part);
  return first;
}

function subsets<T>(items: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return items.flatMap((item, i) =>
    subsets(items.slice(i + 1), size - 1).map((rest) => [item, ...rest]),
  );
}
