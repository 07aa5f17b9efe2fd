import { describe, expect, it } from "vitest";
import { proven } from "../plans.js";

const says = (fitted: Record<string, string>) =>
  proven({ job: "floor-paint", fitted }).steps.map((step) => step.id);

describe("powered seats", () => {
  const ids = says({ seats: "powered" });
  const at = (id: string): number => {
    expect(ids).toContain(id);
    return ids.indexOf(id);
  };

  it("are moved to reach their nuts before the battery is isolated", () => {
    const isolated = at("battery.strip.isolate-battery-supply");
    for (const side of ["left", "right"]) {
      expect(at(`seat-powered.${side}.strip.undo-rear-nut`)).toBeLessThan(isolated);
      expect(at(`seat-powered.${side}.strip.unplug-motor-plug`)).toBeGreaterThan(isolated);
    }
  });

  it("get their nuts after power has returned, each behind its own move", () => {
    const restored = at("battery.refit.restore-battery-supply");
    const forward = at("seat-powered.left.refit.move-seat-forward");
    expect(forward).toBeGreaterThan(restored);
    expect(at("seat-powered.left.refit.do-up-rear-nut")).toBe(forward + 1);
  });
});

describe("the plan", () => {
  it("is the same each time", () => {
    expect(says({})).toEqual(says({}));
  });

  it("counts one-use clips as renewed and screws as back", () => {
    const { count } = proven({ job: "carpet" });
    expect(count).toContainEqual({
      kind: "trim-clip",
      place: "left",
      off: 1,
      added: 0,
      back: 0,
      renewed: 1,
      leftOut: 0,
    });
    expect(count).toContainEqual({
      kind: "trim-screw",
      place: "right",
      off: 4,
      added: 0,
      back: 4,
      renewed: 0,
      leftOut: 0,
    });
  });

  it("asks for the full number where the car came with fewer", () => {
    const car = {
      car: "one",
      range: "tiny",
      found: [{ fixing: "trim-screw", at: "left", present: 1, note: "three were missing" }],
    };
    const { count } = proven({ job: "carpet", car });
    expect(count).toContainEqual({
      kind: "trim-screw",
      place: "left",
      off: 1,
      added: 3,
      back: 1,
      renewed: 3,
      leftOut: 0,
    });
  });
});
