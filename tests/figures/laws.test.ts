import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compute } from "../../src/figures/compute.js";

/** The first value of a result; its upper end where it has one and it is asked for. */
function valueOf(
  figure: string,
  inputs: Record<string, string>,
  result: string,
  end = false,
): number {
  const found = compute(figure, inputs).results.find(({ name }) => name === result);
  const value = end ? (found?.to ?? found?.value) : found?.value;
  if (typeof value !== "number") throw new Error(`${figure} has no number '${result}'`);
  return value;
}

const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
const twice = fc.double({ min: 0.2, max: 0.9, noNaN: true });
const fixed = (value: number): string => value.toFixed(6);
const bolts = fc.constantFrom("M5", "M6", "M8", "M8x1", "M10", "M10x1.25", "M12", "M14", "M16");
const strengths = fc.constantFrom("4.8", "5.8", "8.8", "10.9", "12.9");

describe("torque", () => {
  const torque = (thread: string, strength: string, preload: number, k = "0.2") =>
    valueOf("torque", { thread, class: strength, preload: fixed(preload), k }, "torque");

  it("grows in proportion to the preload", () => {
    fc.assert(
      fc.property(bolts, strengths, twice, (thread, strength, preload) => {
        const half = torque(thread, strength, preload / 2);
        expect(torque(thread, strength, preload) / half).toBeCloseTo(2, 4);
      }),
    );
  });

  it("grows with the class and with the size", () => {
    const classes = ["4.6", "4.8", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9"];
    const byClass = classes.map((strength) => torque("M8", strength, 0.75));
    expect(byClass).toEqual(byClass.toSorted((a, b) => a - b));
    const sizes = ["M3", "M4", "M5", "M6", "M7", "M8", "M10", "M12", "M14", "M16"];
    const bySize = sizes.map((thread) => torque(thread, "8.8", 0.75));
    expect(bySize).toEqual(bySize.toSorted((a, b) => a - b));
    expect(new Set([...byClass, ...bySize]).size).toBe(classes.length + sizes.length - 1);
  });

  it("of a lubricated thread is below that of a dry one, and unknown spans both", () => {
    const at = (condition: string, end: boolean) =>
      valueOf("torque", { thread: "M8", class: "8.8", condition }, "torque", end);
    expect(at("lubricated", true)).toBeLessThan(at("plain", false));
    expect(at("unknown", false)).toBeLessThan(at("lubricated", false));
    expect(at("unknown", true)).toBeGreaterThanOrEqual(at("plain", true));
  });

  it("and clamp load are inverse", () => {
    fc.assert(
      fc.property(bolts, strengths, share, (thread, strength, preload) => {
        const newtonMetres = torque(thread, strength, preload);
        fc.pre(newtonMetres > 0.5 && newtonMetres < 500);
        const clamp = valueOf(
          "clamp-load",
          { thread, class: strength, torque: `${newtonMetres.toFixed(9)} N·m`, k: "0.2" },
          "share of proof load",
        );
        expect(clamp / 100).toBeCloseTo(preload, 5);
      }),
    );
  });

  it("that is computed passes its own check", () => {
    fc.assert(
      fc.property(bolts, strengths, share, (thread, strength, preload) => {
        const text = `${torque(thread, strength, preload).toFixed(9)} N·m`;
        fc.pre(Number.parseFloat(text) > 0.5 && Number.parseFloat(text) < 500);
        const given = { thread, class: strength, torque: text, k: "0.2" };
        const [verdict] = compute("torque-check", given).results;
        expect(verdict?.value).not.toBe("within only where the threads rub enough");
      }),
    );
  });
});

describe("plug welds", () => {
  const count = (inputs: Record<string, string>) =>
    valueOf("plug-weld-count", { steel: "mild", hole: "8 mm", ...inputs }, "plug welds");

  it("are never fewer than the factory's, and more with more margin", () => {
    const numbers = fc.record({
      sheet: fc.double({ min: 0.5, max: 3.2, noNaN: true }),
      welds: fc.integer({ min: 1, max: 200 }),
      margin: fc.double({ min: 1, max: 1.5, noNaN: true }),
    });
    fc.assert(
      fc.property(numbers, ({ sheet, welds, margin }) => {
        const inputs = { sheet: `${fixed(sheet)} mm`, welds: String(welds) };
        const one = count({ ...inputs, margin: fixed(margin) });
        expect(one).toBeGreaterThanOrEqual(welds);
        expect(count({ ...inputs, margin: fixed(margin + 0.5) })).toBeGreaterThanOrEqual(one);
      }),
    );
  });

  it("of a greater hole are fewer until the factory's count holds", () => {
    const holes = ["5 mm", "6 mm", "8 mm", "10 mm", "12 mm"];
    const counts = holes.map((hole) => count({ hole, sheet: "0.8 mm", welds: "20" }));
    expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    expect(counts[0]).toBeGreaterThan(counts.at(-1) ?? 0);
    expect(counts.at(-1)).toBe(20);
  });
});

describe("laws of scale", () => {
  it("the spindle turns half as fast at twice the diameter", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (diameter) => {
        const rpm = (d: number) =>
          valueOf("spindle-speed", { tool: "drill", diameter: `${fixed(d)} mm` }, "spindle speed");
        expect(rpm(diameter) / rpm(2 * diameter)).toBeCloseTo(2, 4);
      }),
    );
  });

  it("wire of half the diameter is four times as long", () => {
    const length = (wire: string) => valueOf("wire-length", { wire, mass: "1 kg" }, "length");
    expect(length("0.6 mm") / length("1.2 mm")).toBeCloseTo(4, 9);
  });

  it("a coating's amount grows with area, film and loss", () => {
    const amount = (area: string, film: string, loss: string) =>
      valueOf("coverage", { area, film, loss, solids: "50" }, "amount");
    const one = amount("1 m²", "50 µm", "0");
    expect(amount("3 m²", "50 µm", "0") / one).toBeCloseTo(3, 9);
    expect(amount("1 m²", "100 µm", "0") / one).toBeCloseTo(2, 9);
    expect(amount("1 m²", "50 µm", "0.5") / one).toBeCloseTo(2, 9);
  });

  it("spot welds grow stronger and stand further apart with the sheet", () => {
    const sheets = [0.5, 0.7, 0.8, 1, 1.2, 1.5, 2, 2.5, 3].map((t) => ({ sheet: `${t} mm` }));
    for (const result of ["least shear", "nominal shear", "nugget"]) {
      const values = sheets.map((inputs) => valueOf("spot-weld", inputs, result));
      expect(values).toEqual(values.toSorted((a, b) => a - b));
      expect(new Set(values).size).toBe(sheets.length);
    }
    const pitches = sheets.map((inputs) => valueOf("spot-weld", inputs, "least pitch"));
    expect(pitches).toEqual(pitches.toSorted((a, b) => a - b));
  });

  it("a thicker gauge number is a thinner sheet", () => {
    const gauges = Array.from({ length: 17 }, (_, index) => String(10 + index));
    const values = gauges.map((gauge) => valueOf("gauge", { gauge }, "thickness"));
    expect(values).toEqual(values.toSorted((a, b) => b - a));
    expect(new Set(values).size).toBe(17);
  });

  it("the lens is never lighter at more current", () => {
    const shades = [20, 59, 60, 160, 250, 500].map((current) =>
      valueOf("lens-shade", { current: `${current} A` }, "least shade"),
    );
    expect(shades).toEqual(shades.toSorted((a, b) => a - b));
  });
});
