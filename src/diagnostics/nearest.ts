import { distance } from "fastest-levenshtein";

/** The known name nearest to a mistyped one, if one is near enough to be meant. */
export function nearest(name: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let bestDistance = Math.max(2, Math.floor(name.length / 3)) + 1;
  for (const candidate of known) {
    const d = distance(name, candidate);
    if (d < bestDistance) [best, bestDistance] = [candidate, d];
  }
  return best;
}

/** The hint that offers the nearest known name, or lists the few there are. */
export function didYouMean(name: string, known: Iterable<string>): string[] {
  const all = [...known];
  const near = nearest(name, all);
  if (near !== undefined) return [`Did you mean '${near}'?`];
  return all.length > 0 && all.length <= 12 ? [`Known here: ${all.join(", ")}.`] : [];
}
