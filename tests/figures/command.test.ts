import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { figureCommand } from "../../src/commands/figure.js";
import { figures } from "../../src/figures/figures.js";

let stdout = "";
let stderr = "";

beforeEach(() => {
  stdout = "";
  stderr = "";
  vi.spyOn(process.stdout, "write").mockImplementation((text) => Boolean((stdout += String(text))));
  vi.spyOn(process.stderr, "write").mockImplementation((text) => Boolean((stderr += String(text))));
});

afterEach(() => {
  vi.restoreAllMocks();
});

describe("countback figure", () => {
  it("lists every figure with one line", () => {
    expect(figureCommand([], {})).toBe(0);
    const lines = stdout.trimEnd().split("\n");
    expect(lines.map((line) => line.split(" ")[0])).toEqual(figures.map(({ name }) => name));
    expect(lines.filter((line) => line.length > 90)).toEqual([]);
  });

  it("lists the inputs too as JSON", () => {
    expect(figureCommand([], { json: true })).toBe(0);
    const [first] = JSON.parse(stdout) as { name: string; inputs: { name: string }[] }[];
    expect(first?.inputs).toEqual([
      { name: "thread", about: "the screw thread", takes: "M8, M10x1.25 or 5/16-18" },
    ]);
  });

  it("prints a torque with its inputs, formula, source and caution", () => {
    expect(figureCommand(["torque", "thread=M8", "class=8.8", "condition=zinc"], {})).toBe(0);
    const lines = stdout.split("\n");
    expect(lines.slice(0, 9)).toEqual([
      "torque: the tightening torque of a bolt, as a range over how the threads rub",
      "  torque      21.66 to 25.48 N·m (15.97 to 18.79 lbf·ft)",
      "  clamp load  15920 N (3580 lbf)",
      "from",
      "  thread     M8",
      "  class      8.8",
      "  condition  zinc",
      "  preload    0.75 (assumed)",
      "Formula: T = K · D · F, with F = preload · As · Sp",
    ]);
    expect(stdout).toMatch(/^Source: Shigley.*\nHolds for: M3 to M20.*\nCaution: The maker's/m);
    expect(stderr).toBe("");
  });

  it("gives the same as JSON, unrounded", () => {
    expect(figureCommand(["inch-drill", "size=5/16 in"], { json: true })).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({
      figure: "inch-drill",
      inputs: [{ name: "size", value: "5/16 in", assumed: false }],
      results: [
        { name: "inch", value: "5/16 in" },
        { name: "size", value: 7.9375, unit: "mm" },
        { name: "drill", value: 8, unit: "mm" },
        { name: "error", value: 0.0625, unit: "mm" },
      ],
    });
  });

  it("prints a conversion to seven digits", () => {
    expect(figureCommand(["convert", "value=25 ft-lb", "to=Nm"], {})).toBe(0);
    expect(stdout).toContain("  value  33.89545 N·m\n");
  });

  it.each([
    [["tork"], "countback: no figure is called 'tork'"],
    [["torque", "M8"], "countback: 'M8' is not input=value"],
    [["torque", "thread="], "countback: 'thread=' is not input=value"],
    [["torque", "thread=M8", "thread=M10"], "countback: thread is given twice"],
    [["torque", "thread=M8"], "countback: figure torque needs class=…"],
  ])("%o is a wrong command line", (names, message) => {
    expect(figureCommand(names, {})).toBe(2);
    expect(stderr).toContain(message);
    expect(stdout).toBe("");
  });

  it("refuses what has no sound answer", () => {
    const names = ["plug-weld-hole", "sheet=12 mm"];
    expect(figureCommand(names, {})).toBe(1);
    expect(stderr).toBe(
      "countback: sheet: '12 mm' is outside 0.5 to 3.2 mm\n  hint: Did you mean 1.2 mm?\n",
    );
    expect(figureCommand(names, { json: true })).toBe(1);
    expect(JSON.parse(stdout)).toEqual({
      refused: "sheet: '12 mm' is outside 0.5 to 3.2 mm",
      hints: ["Did you mean 1.2 mm?"],
    });
  });
});
