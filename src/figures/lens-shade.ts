import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** Up to which current in A: the least shade, and the shade suggested where there is one. */
const bands = [
  { below: 60, least: 7 },
  { below: 160, least: 10, suggested: 11 },
  { below: 250, least: 10, suggested: 12 },
  { below: Infinity, least: 10, suggested: 14 },
] as const;

/** Shade of the welding filter by current, for gas metal and flux cored arc welding. */
export const lensShade = figure({
  name: "lens-shade",
  about: "the shade of the welding filter, by current",
  inputs: { current: quantity("welding current", "current", [10, 500, "A"]) },
  formula: "table by current; at a border between two bands the darker",
  source:
    "Least: 29 CFR 1910.133(a)(5), gas metal arc and flux cored arc welding. Suggested: ANSI Z49.1, from memory.",
  range: "10 to 500 A, gas metal arc and flux cored arc welding; refuses others.",
  caution:
    "Start too dark and go lighter until the weld zone is seen, never below the least. Whoever watches needs a filter too.",
  compute: (given) => {
    const amperes = valueIn(given.current, "A");
    const band = bands.find(({ below }) => amperes < below) ?? bands[3];
    return {
      results: [
        { name: "least shade", value: band.least, unit: "1" },
        ...("suggested" in band
          ? [{ name: "suggested shade", value: band.suggested, unit: "1" as const }]
          : []),
      ],
    };
  },
});
