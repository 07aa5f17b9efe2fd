import { describe, expect, it } from "vitest";
import { isPlausible, meant, written } from "../../src/validate/quantity.js";

it.each([
  [3, 3],
  ["5/16", 0.3125],
  ["1 1/8", 1.125],
  ["3 1/8", 3.125],
])("%s is read as %d", (text, value) => {
  expect(written(text).value).toBe(value);
});

describe("bounds hold in any unit of the kind", () => {
  it.each([
    ["plug-hole", 8, "mm", true],
    ["plug-hole", 5 / 16, "in", true],
    ["plug-hole", 3.125, "in", false],
    ["pilot-hole", 1 / 8, "in", true],
    ["torque", 221, "lbf·ft", true],
    ["torque", 222, "lbf·ft", false],
    ["torque", 20, "mm", false],
    ["sheet", 12, "mm", false],
    ["film", 60, "µm", true],
    ["time", 14, "h", true],
    ["time", 1, "s", true],
    ["temperature", -5, "°C", true],
  ] as const)("%s %d %s: %s", (kind, value, unit, sound) => {
    expect(isPlausible(kind, value, unit)).toBe(sound);
  });
});

describe("what was meant", () => {
  it.each([
    ["plug-hole", "3 1/8", "in", "Did you mean 3/8 in?"],
    ["pilot-hole", "3 1/8", "in", "Did you mean 1/8 in?"],
    ["plug-hole", 80, "mm", "Did you mean 8 mm?"],
    ["sheet", 0.08, "mm", "Did you mean 0.8 mm?"],
    ["plug-hole", 8, "in", "Did you mean 8 mm?"],
    ["film", 60, "mm", "Did you mean 60 µm?"],
  ] as const)("%s %s %s", (kind, value, unit, hint) => {
    expect(meant(kind, value, unit)).toEqual([hint]);
  });

  it("is not guessed where no slip makes sense of it", () => {
    expect(meant("torque", -5, "N·m")).toEqual([]);
    expect(meant("plug-hole", 0, "mm")).toEqual([]);
  });
});
