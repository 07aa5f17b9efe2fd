import { describe, expect, it } from "vitest";
import { arrange } from "../../src/arrange/arrange.js";
import { phases } from "../../src/model/plan.js";
import { jobsOf, opened, own, small } from "../plans.js";
import { benchOf } from "../prove/bench.js";
import { breaches, orderOf, plainOf, walked } from "./oracle.js";

const jobs = [own, small].flatMap((folder) => {
  const library = opened(folder);
  return jobsOf(library).map((job) => ({
    name: `${folder}: ${job.name}`,
    ...benchOf(library, job.ask),
  }));
});

it("has jobs to look at", () => {
  expect(jobs.length).toBeGreaterThan(30);
});

describe.each(jobs)("$name", ({ tasks }) => {
  const { steps, walk, plain } = arrange(tasks);
  const all = tasks.flatMap((task) => phases.flatMap((phase) => task.steps[phase]));
  const test = ({ verb, does }: (typeof all)[number]): string =>
    ["try", "inspect"].includes(verb)
      ? does.map(({ object, place, round }) => `${verb} ${object} ${place} ${round ?? 1}`).join()
      : "";

  it("has every step once, a function test or a search that two recipes ask for once for both", () => {
    const ids = steps.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const lost = all.filter(({ id }) => !ids.includes(id));
    expect(lost.filter((step) => test(step) === "")).toEqual([]);
    const tests = [...new Set(all.map(test))].filter((one) => one !== "").toSorted();
    expect(
      steps
        .map(test)
        .filter((one) => one !== "")
        .toSorted(),
    ).toEqual(tests);
  });

  it("keeps the order that the recipes ask for", () => {
    const ids = steps.map(({ id }) => id);
    const wrong = breaches(orderOf(tasks), ids).filter((one) => !one.endsWith(" is lost"));
    expect(wrong.filter((one) => one.split(" before ").every((id) => ids.includes(id)))).toEqual(
      [],
    );
  });

  it("walks no further than the plain topological order", () => {
    const seen = new Set<string>();
    const first = plainOf(tasks).filter((step) => {
      const key = test(step);
      return key === "" || (!seen.has(key) && seen.add(key));
    });
    const [near, far] = [walked(steps), walked(first)];
    expect(walk).toEqual(near);
    expect(plain).toEqual(far);
    expect(near.zoneChanges).toBeLessThanOrEqual(far.zoneChanges);
    expect(near.toolChanges).toBeLessThanOrEqual(far.toolChanges);
  });
});
