import type { Step } from "../model/plan.js";

/** Steps in words, runs of neighbours of the plan together: '12, 17, 182 to 186'. */
export function stepList(some: readonly Step[], steps: readonly Step[], to: string): string {
  const places = some.map((step) => steps.indexOf(step)).sort((a, b) => a - b);
  return runList(places, (at) => steps[at]?.n ?? "", to);
}

/** Places of a list in words, by their names, runs of neighbours together; the places come in order. */
export function runList(
  places: readonly number[],
  nameOf: (place: number) => string,
  to: string,
): string {
  const runs: [number, number][] = [];
  for (const at of places) {
    const last = runs.at(-1);
    if (last && at - last[1] <= 1) last[1] = at;
    else runs.push([at, at]);
  }
  const words = ([a, b]: [number, number]): string =>
    b - a < 2 ? [...new Set([nameOf(a), nameOf(b)])].join(", ") : `${nameOf(a)} ${to} ${nameOf(b)}`;
  return runs.map(words).join(", ");
}
