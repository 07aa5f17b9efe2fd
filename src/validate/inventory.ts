import type { RangeFile } from "../model/generated/range.js";
import type { Path } from "../model/source.js";

type Part = RangeFile["parts"][string];
type Fixing = NonNullable<Part["held-by"]>[string];
type Join = NonNullable<Part["plugs"]>[string];

/** A value of a range's inventory: its name and where it stands. */
export interface Entry<T> {
  name: string;
  value: T;
  path: Path;
}

/** A fixing or join, with the places at which the part or surface that has it is found. */
export type Held<T> = Entry<T> & { at: string[] };

/** The entries of a map of a file. */
export function entries<T>(map: Record<string, T> | undefined, path: Path): Entry<T>[] {
  return Object.entries(map ?? {}).map(([name, value]) => ({ name, value, path: [...path, name] }));
}

/** Every fixing of a range. */
export function fixingsOf({ parts, surfaces }: RangeFile): Held<Fixing>[] {
  return [
    ...entries(parts, ["parts"]).flatMap((part) => held(part, "held-by", part.value["held-by"])),
    ...entries(surfaces, ["surfaces"]).flatMap((surface) =>
      held(surface, "closed-by", surface.value["closed-by"]),
    ),
  ];
}

/** Every plug and hook of a range. */
export function joinsOf({ parts }: RangeFile): Held<Join>[] {
  return entries(parts, ["parts"]).flatMap((part) => [
    ...held(part, "plugs", part.value.plugs),
    ...held(part, "hooks", part.value.hooks),
  ]);
}

function held<T>(
  { path, value }: Entry<{ at?: string | string[] }>,
  key: string,
  map: Record<string, T> | undefined,
): Held<T>[] {
  const at = [value.at ?? []].flat();
  return entries(map, [...path, key]).map((entry) => ({ ...entry, at }));
}

const sides: Record<string, string[]> = {
  driver: ["left", "right"],
  passenger: ["left", "right"],
  both: ["left", "right"],
};

/** The places on a car that an `at` can come to mean. */
export function placesOf(at: readonly string[]): string[] {
  return at.flatMap((one) => sides[one] ?? [one]);
}

/** The words that an `at` of this range, its recipes and its cars may use. */
export function positionsOf({ parts, surfaces, joints, functions }: RangeFile): string[] {
  const own = [parts, surfaces, joints, functions].flatMap((map) =>
    Object.values(map ?? {}).flatMap((one: { at?: string | string[] }) => one.at ?? []),
  );
  return [...new Set(["left", "right", "driver", "passenger", "both", ...own.flat()])];
}
