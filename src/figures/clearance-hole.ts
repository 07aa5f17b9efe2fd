import { choice, otherwise } from "./input.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { thread } from "./thread.js";

const fits = ["fine", "medium", "coarse"] as const;

/** Clearance hole in mm by nominal diameter in mm, fine, medium and coarse: ISO 273, as two makers reprint it. */
const holes: Readonly<Record<string, readonly [number, number, number]>> = {
  3: [3.2, 3.4, 3.6],
  4: [4.3, 4.5, 4.8],
  5: [5.3, 5.5, 5.8],
  6: [6.4, 6.6, 7],
  7: [7.4, 7.6, 8],
  8: [8.4, 9, 10],
  10: [10.5, 11, 12],
  12: [13, 13.5, 14.5],
  14: [15, 15.5, 16.5],
  16: [17, 17.5, 18.5],
  18: [19, 20, 21],
  20: [21, 22, 24],
};

/** Clearance hole of a metric bolt, mm. */
export const clearanceHole = figure({
  name: "clearance-hole",
  about: "the hole that a metric bolt passes through",
  inputs: { thread, fit: otherwise(choice("how closely it fits", fits), "medium") },
  formula: "table by nominal diameter and fit",
  source: "ISO 273, table of clearance holes, as reprinted by two makers.",
  range: "M3 to M20; refuses unified threads, whose clearance holes are another standard's.",
  compute: ({ thread: { name, series, diameter }, fit }) => {
    const row = series === "metric" ? holes[diameter] : undefined;
    const hole = row?.[fits.indexOf(fit)];
    if (hole === undefined)
      throw new Refusal("refused", `ISO 273 has no clearance hole for ${name}`, [
        `It has: ${Object.keys(holes)
          .map((size) => `M${size}`)
          .join(", ")}.`,
      ]);
    return { results: [{ name: "hole", value: hole, unit: "mm" }] };
  },
});
