import { cpSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { combinationsOf, smallestCause } from "../../src/find/combinations.js";
import { optionsThatMatter } from "../../src/find/matters.js";
import { countback } from "../countback.js";
import { opened, own, small } from "../plans.js";

const range = (() => {
  const [first] = opened(own).library.ranges;
  if (!first) throw new Error("no range");
  return first.data;
})();

describe("combinations of options", () => {
  it("are all there are, each once", () => {
    const { sets, left } = combinationsOf(range, ["console", "seats", "radio"], 20_000);
    expect(sets).toHaveLength(3 * 2 * 2);
    expect(new Set(sets.map((set) => JSON.stringify(set))).size).toBe(12);
    expect(left).toBe(0);
  });

  it("stop at the most that are asked for, and say how many are left", () => {
    const { sets, left } = combinationsOf(range, Object.keys(range.options), 10);
    expect(sets).toHaveLength(10);
    expect(left).toBe(2 * 3 * 2 * 2 * 2 - 10);
  });

  it("the smallest cause is what the failing sets share and no other set has", () => {
    const { sets } = combinationsOf(range, ["console", "seats", "radio"], 20_000);
    const bad = (wanted: Record<string, string>): Record<string, string> =>
      smallestCause(
        sets.filter((set) => Object.entries(wanted).every(([key, value]) => set[key] === value)),
        sets,
      );
    expect(bad({})).toEqual({});
    expect(bad({ seats: "powered" })).toEqual({ seats: "powered" });
    expect(bad({ seats: "powered", console: "long" })).toEqual({
      seats: "powered",
      console: "long",
    });
  });
});

describe("options that matter", () => {
  const recipes = opened(own).library.recipes.map((one) => one.data);
  const matter = (name: string): string[] => {
    const recipe = recipes.find((one) => one.recipe === name);
    return recipe ? optionsThatMatter(range, recipes, recipe).toSorted() : [];
  };

  it("are those that the closure of the job mentions, and no others", () => {
    expect(matter("battery")).toEqual([]);
    expect(matter("knee-panel")).toEqual(["drive"]);
    expect(matter("console-lid")).toEqual(["console"]);
    expect(matter("seat-crossmember")).toEqual(Object.keys(range.options).toSorted());
  });
});

it("check names the smallest set of options in which a law breaks", () => {
  const folder = mkdtempSync(join(tmpdir(), "countback-sets-"));
  cpSync(small, folder, { recursive: true });
  const file = join(folder, "tiny/strip/seat-powered.yaml");
  const text = readFileSync(file, "utf8");
  const broken = text.replace(/ {2}- unplug: motor-plug\n(?: {4}.*\n)*/, "");
  expect(broken).not.toBe(text);
  writeFileSync(file, broken);
  const { code, stderr } = countback(["check", "--library", folder]);
  expect(code).toBe(1);
  expect(stderr).toContain("is still held by 'motor-plug@left'");
  expect(stderr).toContain("Job tiny/carpet: on every car with seats=powered.");
});
