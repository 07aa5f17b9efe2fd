import type { Step } from "../model/plan.js";

/** Steps in words, runs of neighbours of the plan together: '12, 17, 182 to 186'. */
export function stepList(some: readonly Step[], steps: readonly Step[], to: string): string {
  const places = some.map((step) => steps.indexOf(step)).sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const at of places) {
    const last = runs.at(-1);
    if (last && at - last[1] <= 1) last[1] = at;
    else runs.push([at, at]);
  }
  const n = (at: number): string => steps[at]?.n ?? "";
  const words = ([a, b]: [number, number]): string =>
    b - a < 2 ? [...new Set([n(a), n(b)])].join(", ") : `${n(a)} ${to} ${n(b)}`;
  return runs.map(words).join(", ");
}
