import { spawnSync } from "node:child_process";
import fc from "fast-check";
import graphlib from "graphlib";
import { expect, it, vi } from "vitest";
import { arrange } from "../../src/arrange/arrange.js";
import type { Step } from "../../src/model/plan.js";
import type { Task } from "../../src/model/task.js";
import { breaches, orderOf, plainOf, walked } from "./oracle.js";
import { randomTasks } from "./tasks.js";

vi.setConfig({ testTimeout: 60_000 });
const runs = { numRuns: 2000, seed: 20 };
const idsOf = (tasks: readonly Task[]): string[] => arrange(tasks).steps.map((step) => step.id);

it("puts every step in once, in an order that the graph library allows, and walks no further than the plain one", () => {
  let shorter = 0;
  fc.assert(
    fc.property(randomTasks, (tasks) => {
      const graph = orderOf(tasks);
      expect(graphlib.alg.isAcyclic(graph)).toBe(true);
      const { steps, walk } = arrange(tasks);
      const ids = steps.map((step) => step.id);
      expect(ids.toSorted()).toEqual(graphlib.alg.topsort(graph).toSorted());
      expect(breaches(graph, ids)).toEqual([]);
      const [near, plain] = [walked(steps), walked(plainOf(tasks, graph))];
      expect(walk).toEqual(near);
      expect(near.zoneChanges).toBeLessThanOrEqual(plain.zoneChanges);
      expect(near.toolChanges).toBeLessThanOrEqual(plain.toolChanges);
      shorter += near.zoneChanges < plain.zoneChanges ? 1 : 0;
    }),
    runs,
  );
  expect(shorter).toBeGreaterThan(100);
});

it("coreutils tsort, given the needs and the order together, finds no loop and gives that order", () => {
  let checked = 0;
  fc.assert(
    fc.property(randomTasks, (tasks) => {
      const ids = idsOf(tasks);
      const chain = ids.slice(1).map((id, i) => `${ids[i]} ${id}`);
      const needs = orderOf(tasks)
        .edges()
        .map(({ v, w }) => `${v} ${w}`);
      const run = spawnSync("tsort", { input: [...needs, ...chain].join("\n"), encoding: "utf8" });
      expect(run.stderr).toBe("");
      if (ids.length > 1) expect(run.stdout.trim().split("\n")).toEqual(ids);
      checked += ids.length > 1 ? 1 : 0;
    }),
    { ...runs, numRuns: 100 },
  );
  expect(checked).toBeGreaterThan(80);
});

it("gives the same order twice, and numbers it from 1", () => {
  fc.assert(
    fc.property(randomTasks, (tasks) => {
      expect(arrange(structuredClone(tasks))).toEqual(arrange(tasks));
      expect(arrange(tasks).steps.map((step) => Number(step.n))).toEqual(
        arrange(tasks).steps.map((_, i) => i + 1),
      );
    }),
    { ...runs, numRuns: 300 },
  );
});

it("orders permuted tasks as well, every time in the same way", () => {
  fc.assert(
    fc.property(randomTasks, fc.infiniteStream(fc.nat()), (tasks, dice) => {
      const keys = new Map(tasks.map((task) => [task, dice.next().value ?? 0]));
      const other = tasks.toSorted((a, b) => (keys.get(a) ?? 0) - (keys.get(b) ?? 0));
      expect(breaches(orderOf(tasks), idsOf(other))).toEqual([]);
      expect(idsOf(other)).toEqual(idsOf(structuredClone(other)));
    }),
    { ...runs, numRuns: 300 },
  );
});

it("does a function test that several tasks ask for once, and still walks no further", () => {
  let dropped = 0;
  fc.assert(
    fc.property(randomTasks, (tasks) => {
      const shared = tasks.map((task) => ({
        ...task,
        steps: {
          ...task.steps,
          close: task.steps.close.map((step, i) => ({
            ...step,
            verb: "try",
            does: [{ verb: "try", object: `function-${i}`, place: "" }],
          })),
        },
      }));
      const once = (steps: readonly Step[]): Step[] => {
        const seen = new Set<string>();
        return steps.filter(({ verb, does: [does] }) => {
          const name = does?.object ?? "";
          return verb !== "try" || (!seen.has(name) && seen.add(name));
        });
      };
      const { steps } = arrange(shared);
      expect(once(steps)).toEqual(steps);
      const all = shared.flatMap((task) => Object.values(task.steps).flat());
      expect(steps.length).toBe(once(all).length);
      const [near, plain] = [walked(steps), walked(once(plainOf(shared)))];
      expect(near.zoneChanges).toBeLessThanOrEqual(plain.zoneChanges);
      expect(near.toolChanges).toBeLessThanOrEqual(plain.toolChanges);
      dropped += all.length - steps.length;
    }),
    { ...runs, numRuns: 500 },
  );
  expect(dropped).toBeGreaterThan(100);
});
