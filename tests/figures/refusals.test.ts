import { describe, expect, it } from "vitest";
import { compute } from "../../src/figures/compute.js";
import { figures } from "../../src/figures/figures.js";
import { Refusal } from "../../src/figures/refusal.js";

/** The refusal that a request meets. */
function refused(name: string, inputs: Record<string, string>): Refusal {
  try {
    compute(name, inputs);
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error(`${name} was not refused`);
}

const bolt = { thread: "M8", class: "8.8" };
const plug = { sheet: "0.8 mm", hole: "8 mm", welds: "10", steel: "mild" };

describe("a wrong request says what is allowed", () => {
  it.each([
    ["torqe", bolt, "no figure is called 'torqe'", "Did you mean 'torque'?"],
    [
      "torque",
      { ...bolt, clas: "8.8" },
      "figure torque has no input 'clas'",
      "Did you mean 'class'?",
    ],
    [
      "torque",
      { class: "8.8" },
      "figure torque needs thread=…, the screw thread",
      "Takes M8, M10x1.25 or 5/16-18.",
    ],
    ["torque", { ...bolt, class: "8.9" }, "class: '8.9' is not one of", "Did you mean"],
    ["torque", { ...bolt, thread: "M9" }, "thread: unknown thread 'M9'", "Metric: M3,"],
    ["torque", { ...bolt, thread: "M8x1.3" }, "thread: unknown thread", "Metric: M3,"],
    [
      "torque",
      { ...bolt, k: "0.2 mm" },
      "k: '0.2 mm' is not a number",
      "Takes 0.08 to 0.35, without a unit.",
    ],
    ["torque-check", { ...bolt, torque: "20" }, "torque: '20' has no unit", "A torque takes N·m"],
    [
      "torque-check",
      { ...bolt, torque: "20 mm" },
      "torque: '20 mm' is a length, not a torque",
      "A torque takes N·m",
    ],
    ["convert", { value: "20 mm", to: "N·m" }, "to: N·m is no length", "A length takes mm"],
    ["convert", { value: "20 zoll", to: "mm" }, "value: unknown unit 'zoll'", "Known: 1, mm"],
    ["fire-watch", { code: "osh" }, "code: 'osh' is not one of osha", "Did you mean 'osha'?"],
    ["weld-spacing", { weld: "plug" }, "a plug weld needs hole=…", ""],
    ["weld-spacing", { weld: "spot" }, "a spot weld needs sheet=…", ""],
    [
      "bits-needed",
      { holes: "8.5", life: "20" },
      "holes: '8.5' is not a whole number",
      "Takes a whole number",
    ],
  ])("%s %o", (name, inputs, message, hint) => {
    const refusal = refused(name, inputs);
    expect(refusal.kind).toBe("wrong");
    expect(refusal.message).toContain(message);
    expect(refusal.hints.join(" ")).toContain(hint);
  });
});

describe("what has no sound answer is refused, with what may have been meant", () => {
  it.each([
    [
      "plug-weld-count",
      { ...plug, hole: "3 1/8 in" },
      "outside 4 to 16 mm",
      "Did you mean 3/8 in?",
    ],
    [
      "plug-weld-count",
      { ...plug, sheet: "12 mm" },
      "outside 0.5 to 3.2 mm",
      "Did you mean 1.2 mm?",
    ],
    [
      "plug-weld-count",
      { ...plug, sheet: "0.3 mm" },
      "outside 0.5 to 3.2 mm",
      "Did you mean 3 mm?",
    ],
    [
      "spindle-speed",
      { tool: "drill", diameter: "40 1/8 in" },
      "outside 1 to 80 mm",
      "Did you mean 1/8 in?",
    ],
    ["plug-weld-count", { ...plug, sheet: "-0.8 mm" }, "outside 0.5 to 3.2 mm", ""],
    [
      "plug-weld-count",
      { ...plug, steel: "high-strength" },
      "no count for high-strength steel",
      "the maker's own procedure",
    ],
    [
      "plug-weld-count",
      { ...plug, steel: "unknown" },
      "no count for unknown steel",
      "the maker's own procedure",
    ],
    ["plug-weld-hole", { sheet: "1 in" }, "outside 0.5 to 3.2 mm", "Did you mean 0.1 in?"],
    [
      "torque-check",
      { ...bolt, torque: "240 N·m" },
      "240 N·m stretches M8 beyond its proof load",
      "At most 51.0 N·m reaches the proof load. Was 24 N·m meant?",
    ],
    [
      "torque",
      { thread: "7/16-20", class: "8.8" },
      "no published proof stress of 8.8 for 7/16-20",
      "grade-5",
    ],
    ["torque", { thread: "#10-32", class: "grade-5" }, "no published proof stress", "from 1/4"],
    ["torque", { thread: "M20", class: "4.8" }, "no published proof stress", "up to M16"],
    ["torque", { thread: "M20", class: "9.8" }, "no published proof stress", "up to M16"],
    ["torque", { ...bolt, preload: "1.2" }, "preload: '1.2' is outside 0.1 to 0.9", ""],
    ["clearance-hole", { thread: "1/4-20" }, "ISO 273 has no clearance hole for 1/4-20", "M8"],
    [
      "gmaw-start",
      { sheet: "1.2 mm", joint: "arc-spot" },
      "no published start for arc-spot",
      "0.6 to 1 mm",
    ],
    [
      "spindle-speed",
      { tool: "spot-weld-cutter", diameter: "8 mm" },
      "no published speed",
      "speed=20 m/min",
    ],
    [
      "spindle-speed",
      { tool: "drill", diameter: "8 mm", material: "high-strength-steel" },
      "no published speed",
      "maker",
    ],
    [
      "general-tolerance",
      { size: "3000 mm", class: "f" },
      "no value for 3000 mm",
      "f ends at 2000 mm",
    ],
    ["general-tolerance", { size: "2 mm", class: "v" }, "no value for 2 mm", "v begins above 3 mm"],
    [
      "wire-speed",
      { current: "60 A", wire: "0.7 mm" },
      "no published factor for 0.7 mm wire",
      "0.6, 0.8 and 0.9 mm",
    ],
    ["inch-drill", { size: "1 in" }, "no drill from 1 to 14 mm", ""],
    ["gauge", { gauge: "30" }, "gauge: '30' is outside", ""],
    ["lens-shade", { current: "900 A" }, "outside 10 to 500 A", "Did you mean 90 A?"],
  ])("%s %o", (name, inputs, message, hint) => {
    const refusal = refused(name, inputs);
    expect(refusal.kind).toBe("refused");
    expect(refusal.message).toContain(message);
    expect(refusal.hints.join(" ")).toContain(hint);
  });
});

it("warns of a weld washer on the thinnest sheet", () => {
  const notes = (sheet: string) => compute("plug-weld-hole", { sheet, rule: "sheet-code" }).notes;
  expect(notes("0.65 mm")).toContain("Below 0.7 mm the code asks for a weld washer.");
  expect(notes("0.7 mm")).not.toContain("Below 0.7 mm the code asks for a weld washer.");
});

describe("every figure", () => {
  it.each(figures.map((rule): [string, typeof rule] => [rule.name, rule]))(
    "%s says its formula, source and where it holds",
    (_, { formula, source, range, about, inputs }) => {
      for (const text of [formula, source, range, about]) expect(text.length).toBeGreaterThan(5);
      expect(range).toMatch(/refuses|without an entered speed/i);
      for (const input of Object.values(inputs)) expect(input.takes).not.toBe("");
    },
  );

  it("has a name of its own", () => {
    const names = figures.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it("has fallbacks that it reads itself", () => {
    const fallbacks = figures.flatMap(({ inputs }) =>
      Object.values(inputs).flatMap((input) => (input.fallback === undefined ? [] : [input])),
    );
    expect(fallbacks.length).toBeGreaterThan(10);
    for (const input of fallbacks) expect(() => input.read(input.fallback ?? "")).not.toThrow();
  });

  it("that computes a torque carries the caution that the maker's manual wins", () => {
    const torques = figures.filter(({ name }) => /torque|clamp/.test(name));
    expect(torques.map(({ name }) => name)).toEqual(["torque", "torque-check", "clamp-load"]);
    for (const { caution } of torques)
      expect(caution).toMatch(/maker's manual always wins.*seat, belt, steering, brake.*weld nut/);
  });

  it("that sizes a weld says that the maker wins and that no code is met", () => {
    const welds = figures.filter(({ name }) =>
      /^(plug-weld-(hole|count)|weld-spacing|spot-weld)$/.test(name),
    );
    expect(welds).toHaveLength(4);
    for (const { caution } of welds)
      expect(caution).toMatch(/repair manual always wins.*no structural code/);
  });
});
