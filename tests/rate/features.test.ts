import { describe, expect, it } from "vitest";
import type { Step } from "../../src/model/plan.js";
import { features } from "../../src/rate/features.js";
import { rate } from "../../src/rate/rate.js";
import { blankStep } from "../arrange/tasks.js";
import { proven } from "../plans.js";

/** A step of the way back, about a part of its own unless told otherwise. */
function step(id: string, more: Partial<Step> = {}): Step {
  const blank = blankStep(id, "refit", "do-up", 0);
  return { ...blank, n: id, task: id, position: "", touches: [id], ...more };
}

/** The features that a step shows in a plan made of these steps. */
const shown = (steps: Step[], id: string): string[] =>
  rate(steps).find((one) => one.id === id)?.features ?? [];

const plain = [
  step("a"),
  step("a2", { task: "a" }),
  step("a3", { task: "a" }),
  step("a4", { task: "a" }),
];

// Each feature is one that Reason lists for steps likely to be left out:
// Reason J., Combating omission errors through task analysis and good reminders,
// Quality and Safety in Health Care 2002; 11: 40-44 (read in part).
describe("features of steps that are easily left out", () => {
  it("looks for the six that a plan can show", () => {
    expect(features.map((one) => one.name).sort()).toEqual(
      ["after-goal", "alike", "interrupted", "late", "no-cue", "out-of-sight"].sort(),
    );
  });

  it("shows none for a step amid its own task, in sight, early and alone", () => {
    expect(shown(plain, "a2")).toEqual([]);
  });

  it("late: only the last quarter", () => {
    expect(shown(plain, "a4")).toEqual(["late"]);
    expect(shown(plain, "a3")).toEqual([]);
  });

  it("no cue: the step before it is of another task", () => {
    const steps = [step("a"), step("b"), step("b2", { task: "b" }), step("c")];
    expect(shown(steps, "b")).toContain("no-cue");
    expect(shown(steps, "b2")).not.toContain("no-cue");
  });

  it("out of sight: a part that goes on later hides what it is about", () => {
    const cover = step("cover", { verb: "put-in", hides: ["a"] });
    expect(shown([step("a"), cover], "a")).toContain("out-of-sight");
    expect(shown([cover, step("a")], "a")).not.toContain("out-of-sight");
    expect(rate([step("a"), cover]).find((one) => one.id === "a")?.hiddenBy).toBe("cover");
  });

  it("after the goal: the part of its own task is in its place already", () => {
    const seat = step("seat", { verb: "put-in", task: "seat" });
    const nut = step("nut", { task: "seat" });
    expect(shown([seat, nut], "nut")).toContain("after-goal");
    expect(shown([nut, seat], "nut")).not.toContain("after-goal");
    expect(shown([seat, step("other")], "other")).not.toContain("after-goal");
  });

  it("one of several alike: another step reads the same", () => {
    const two = [step("l", { says: "Do up the nut." }), step("r", { says: "Do up the nut." })];
    expect(shown(two, "l")).toContain("alike");
    expect(shown([step("l"), step("r")], "l")).not.toContain("alike");
  });

  it.each([
    ["a pause", { checks: ["All bags are closed."] }],
    ["a wait", { wait: "20 min" }],
  ])("after an interruption: %s", (_, before) => {
    const steps = [step("before", { ...before, task: "a" }), step("a"), step("a2", { task: "a" })];
    expect(shown(steps, "a")).toContain("interrupted");
    expect(shown(steps, "a2")).not.toContain("interrupted");
  });

  it("ranks by how many features are shown, with no weights of our own", () => {
    const ratings = rate(proven({ job: "carpet" }, "recipes").steps);
    const counts = ratings.map((one) => one.features.length);
    expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    expect(Math.max(...counts)).toBeGreaterThan(3);
  });
});
