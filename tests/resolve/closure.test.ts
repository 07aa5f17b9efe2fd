import fc from "fast-check";
import graphlib from "graphlib";
import { expect, it, vi } from "vitest";
import { plan } from "../../src/index.js";
import { type Item, colour, items, libraryOf } from "./random-library.js";

vi.setConfig({ testTimeout: 60_000 });
const runs = { numRuns: 1000, seed: 7 };

/** Where a part stands: `3@left`; a part that stands once is `3@`. */
const placesOf = (list: readonly Item[], part: number): string[] =>
  list[part]?.sided ? ["left", "right"] : [""];

/** Every part at every place, with an edge to what it needs off: its own side where both have sides, else all. */
function graphOf(list: readonly Item[], fitted: string): graphlib.Graph {
  const graph = new graphlib.Graph();
  for (const [i, item] of list.entries())
    for (const here of placesOf(list, i)) {
      graph.setNode(`${i}@${here}`);
      for (const { part, when } of item.needs) {
        if (when !== undefined && when !== fitted) continue;
        for (const there of placesOf(list, part))
          if (here === "" || there === "" || here === there)
            graph.setEdge(`${i}@${here}`, `${part}@${there}`);
      }
    }
  return graph;
}

/** The same, asked backwards by recursion: is a part touched because one that needs it is? */
function touched(
  list: readonly Item[],
  fitted: string,
  root: number,
  part: number,
  at: string,
): boolean {
  if (part === root) return true;
  return list.some((item, i) => {
    const need = item.needs.find((one) => one.part === part);
    if (need === undefined || (need.when ?? fitted) !== fitted) return false;
    const sides = placesOf(list, i).filter((side) => !side || !at || side === at);
    return sides.some((side) => touched(list, fitted, root, i, side));
  });
}

/** The visits of a plan: `3@left` for each recipe and side that has a step in it. */
function visitsOf(list: readonly Item[], fitted: string, root: number): string[] {
  const name = list[root]?.split && fitted !== "red" ? `r${root}-other` : `r${root}`;
  const { value, diagnostics } = plan(libraryOf(list), {
    job: `made/${name}`,
    fitted: { colour: fitted },
  });
  expect(diagnostics).toEqual([]);
  const visits = (value?.steps ?? []).map(({ task, position }) => {
    const [, part = "", other = ""] = /^r(\d+)(-other)?$/.exec(task) ?? [];
    expect(other !== "").toBe(list[Number(part)]?.split === true && fitted !== "red");
    return `${part}@${position}`;
  });
  return [...new Set(visits)];
}

const cases = fc.tuple(items, colour, fc.nat());

it("takes off what graphlib and a second model reach along the needs that this car meets, and nothing else", () => {
  let [inside, outside] = [0, 0];
  fc.assert(
    fc.property(cases, ([list, fitted, dice]) => {
      const root = dice % list.length;
      const graph = graphOf(list, fitted);
      const start = placesOf(list, root).map((place) => `${root}@${place}`);
      const visits = visitsOf(list, fitted, root);
      expect(visits.toSorted()).toEqual(graphlib.alg.preorder(graph, start).toSorted());
      expect(graphlib.alg.postorder(graph, start).toSorted()).toEqual(visits.toSorted());
      const again = list.flatMap((_, i) =>
        placesOf(list, i)
          .filter((place) => touched(list, fitted, root, i, place))
          .map((place) => `${i}@${place}`),
      );
      expect(visits.toSorted()).toEqual(again.toSorted());
      inside += visits.length;
      outside += graph.nodes().length - visits.length;
    }),
    runs,
  );
  expect(Math.min(inside, outside)).toBeGreaterThan(500);
});

it("reports a circle of needs wherever it is planted, with the way round it", () => {
  const chain = fc.tuple(items, fc.nat(), fc.nat()).map(([list, a, b]) => {
    const [low, high] = [a % list.length, b % list.length].toSorted((x, y) => x - y);
    // A need from the lowest of a row of parts to the highest closes the row to a circle.
    const closed = list.map((item, i) => {
      const row = i > (low ?? 0) && i <= (high ?? 0) ? [{ part: i - 1 }] : [];
      const back = i === low ? [{ part: high ?? 0 }] : [];
      const added = [...row, ...back];
      const kept = item.needs.filter((one) => !added.some(({ part }) => part === one.part));
      return { ...item, split: false, needs: [...kept, ...added] };
    });
    return { list: closed, root: high ?? 0 };
  });
  fc.assert(
    fc.property(chain, colour, ({ list, root }, fitted) => {
      const graph = graphOf(list, fitted);
      const { value, diagnostics } = plan(libraryOf(list), {
        job: `made/r${root}`,
        fitted: { colour: fitted },
      });
      const cycles = diagnostics.filter((d) => d.code === "cycle");
      expect(graphlib.alg.isAcyclic(graph)).toBe(false);
      expect(value).toBeUndefined();
      expect(cycles.length).toBeGreaterThan(0);
      for (const { message, span } of cycles) {
        const round = [...message.matchAll(/r(\d+)(?:@(\w+))?/g)].map(
          ([, i, at]) => `${i}@${at ?? ""}`,
        );
        expect(round.length).toBeGreaterThan(1);
        expect(round.at(-1)).toBe(round[0]);
        for (const [k, node] of round.slice(0, -1).entries())
          expect(graph.successors(node)).toContain(round[k + 1]);
        expect(span?.file).toMatch(/^made\/strip\//);
      }
    }),
    { ...runs, numRuns: 300 },
  );
});
