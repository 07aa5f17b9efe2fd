import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fractionOf, nearestDrill, numberOf } from "../../src/figures/inch.js";
import {
  dimensionOf,
  readAny,
  readQuantity,
  unitsOf,
  valueIn,
} from "../../src/figures/quantity.js";
import type { Quantity } from "../../src/figures/quantity.js";
import { Refusal } from "../../src/figures/refusal.js";
import { type Unit, units } from "../../src/figures/units.js";

const all = Object.keys(units) as Unit[];

const pairs = fc
  .constantFrom(...all)
  .chain((unit) => fc.tuple(fc.constant(unit), fc.constantFrom(...unitsOf(dimensionOf(unit)))));

const refusal = (act: () => unknown): Refusal => {
  try {
    act();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("conversion", () => {
  it("there and back is the same", () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), ([from, to], value) => {
        const there = { value: valueIn({ value, unit: from }, to), unit: to };
        expect(valueIn(there, from)).toBeCloseTo(value, 4);
      }),
    );
  });

  it("of one unit scales, but for a temperature", () => {
    fc.assert(
      fc.property(pairs, fc.integer({ min: 2, max: 50 }), ([from, to], n) => {
        fc.pre(dimensionOf(from) !== "temperature");
        const one = valueIn({ value: 1, unit: from }, to);
        expect(valueIn({ value: n, unit: from }, to) / (n * one)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("never mixes two dimensions", () => {
    const mixed = { value: 1, unit: "N·m" } as Quantity;
    expect(refusal(() => valueIn(mixed, "mm")).kind).toBe("wrong");
  });

  it.each([
    ["-40 °F", "°C", -40],
    ["32 F", "°C", 0],
    ["100 C", "°F", 212],
  ] as const)("%s is %s %d", (text, unit, expected) => {
    expect(valueIn(readQuantity(text, "temperature"), unit)).toBeCloseTo(expected, 10);
  });
});

describe("reading", () => {
  it.each([
    ["8mm", 8, "mm"],
    ["5/16 in", 0.3125, "in"],
    ["1 1/8in", 1.125, "in"],
    ["1-1/8 in", 1.125, "in"],
    ['3/8"', 0.375, "in"],
    [".8 mm", 0.8, "mm"],
    ["60 um", 60, "µm"],
    ["20 Nm", 20, "N·m"],
    ["20 N.m", 20, "N·m"],
    ["15 ft-lb", 15, "lbf·ft"],
    ["15 lb-ft", 15, "lbf·ft"],
    ["90 in-lb", 90, "lbf·in"],
    ["2 m2", 2, "m²"],
    ["2 m^2", 2, "m²"],
    ["12 l/min", 12, "L/min"],
    ["90 a", 90, "A"],
  ])("%s", (text, value, unit) => {
    expect(readAny(text)).toEqual({ value, unit });
  });

  it.each(["", "mm", "0,8 mm", "1/0 in", "eight mm", "1/2/3 in", "NaN mm", "1e3 mm"])(
    "refuses '%s'",
    (text) => {
      expect(refusal(() => readQuantity(text, "length")).kind).toBe("wrong");
    },
  );

  it("refuses a bare number with the units allowed", () => {
    const { message, hints } = refusal(() => readQuantity("20", "torque"));
    expect(message).toBe("'20' has no unit");
    expect(hints).toEqual(["A torque takes N·m, lbf·ft, lbf·in, kgf·m."]);
  });

  it("refuses another dimension", () => {
    expect(refusal(() => readQuantity("20 mm", "torque")).message).toBe(
      "'20 mm' is a length, not a torque",
    );
  });

  it("refuses an unknown unit with the nearest", () => {
    const { message, hints } = refusal(() => readQuantity("20 mmm", "length"));
    expect(message).toBe("unknown unit 'mmm'");
    expect(hints[0]).toBe("Did you mean 'mm'?");
  });
});

describe("inches", () => {
  it.each([
    [0.3125, "5/16"],
    [1.125, "1 1/8"],
    [2, "2"],
    [0, "0"],
    [1 / 64, "1/64"],
    [0.32, "≈ 5/16"],
    [-0.375, "-3/8"],
    [63.999 / 64, "≈ 1"],
  ])("%d reads %s", (inches, text) => {
    expect(fractionOf(inches)).toBe(text);
  });

  it("a fraction of 64ths reads back as itself", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 640 }), (n) => {
        expect(numberOf(fractionOf(n / 64))).toBe(n / 64);
      }),
    );
  });

  it("the nearest drill is never more than half a step away", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 14, noNaN: true }), (size) => {
        expect(Math.abs((nearestDrill(size) ?? Number.NaN) - size)).toBeLessThanOrEqual(
          0.25 + 1e-12,
        );
      }),
    );
    expect([nearestDrill(0.5), nearestDrill(15)]).toEqual([undefined, undefined]);
  });
});
