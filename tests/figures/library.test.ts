import { fraction, number, unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { fractionOf, numberOf } from "../../src/figures/inch.js";
import { dimensionOf, unitsOf, valueIn } from "../../src/figures/quantity.js";
import { units, type Unit } from "../../src/figures/units.js";

/** How mathjs, a general reference library that shares nothing with our tables, writes our units; those it does not know are left out. */
const names: Partial<Record<Unit, string>> = {
  mm: "mm",
  µm: "um",
  cm: "cm",
  m: "m",
  in: "in",
  ft: "ft",
  "mm²": "mm^2",
  "cm²": "cm^2",
  "m²": "m^2",
  "in²": "in^2",
  "ft²": "ft^2",
  L: "L",
  g: "g",
  kg: "kg",
  oz: "oz",
  lb: "lbm",
  N: "N",
  kN: "kN",
  lbf: "lbf",
  "N·m": "N m",
  "lbf·ft": "lbf ft",
  "lbf·in": "lbf in",
  psi: "psi",
  bar: "bar",
  kPa: "kPa",
  s: "s",
  min: "minute",
  h: "hour",
  "°C": "degC",
  "°F": "degF",
};

const pairs = (Object.keys(names) as Unit[]).flatMap((from) =>
  unitsOf(dimensionOf(from)).flatMap((to) =>
    names[to] === undefined || to === from ? [] : [[from, to] as const],
  ),
);

describe("conversion against a general library", () => {
  it("covers most units", () => {
    expect(pairs.length).toBeGreaterThan(60);
    expect(Object.keys(names).length / Object.keys(units).length).toBeGreaterThan(0.5);
  });

  it.each(pairs)("%s to %s", (from, to) => {
    for (const value of [1, 37.5, 1200]) {
      const ours = valueIn({ value, unit: from }, to);
      const theirs = unit(value, names[from] ?? "").toNumber(names[to] ?? "");
      expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(theirs)));
    }
  });
});

describe("inch fractions against a general library", () => {
  const sixtyFourths = Array.from({ length: 127 }, (_, i) => i + 1);

  it("every sixty-fourth up to two inches is written as the library reads it, and read back", () => {
    for (const n of sixtyFourths) {
      const text = fractionOf(n / 64);
      const theirs = number(fraction(text.replace(/ in$/, "")));
      expect(theirs, text).toBe(n / 64);
      expect(numberOf(text.replace(/ in$/, "")), text).toBe(n / 64);
    }
  });
});
