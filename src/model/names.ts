import type { RangeFile } from "./generated/range.js";

/** Every name that a range declares, fitted to a given car or not. */
export function namesOf(range: RangeFile): string[] {
  const { parts, supplies = {}, surfaces = {}, joints = {}, functions = {} } = range;
  const inside = Object.values(parts).flatMap((part) =>
    [part["held-by"], part.plugs, part.hooks].flatMap((m) => Object.keys(m ?? {})),
  );
  const closing = Object.values(surfaces).flatMap((surface) =>
    Object.keys(surface["closed-by"] ?? {}),
  );
  return [parts, supplies, surfaces, joints, functions]
    .flatMap((map) => Object.keys(map))
    .concat(inside, closing);
}
