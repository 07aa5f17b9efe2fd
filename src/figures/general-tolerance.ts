import { choice, otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";

const classes = ["f", "m", "c", "v"] as const;

/** Up to which size in mm: plus or minus in mm for fine, medium, coarse and very coarse; f of 120 to 400 and m of 30 to 400 from memory. */
const rows: readonly { upTo: number; f?: number; m: number; c: number; v?: number }[] = [
  { upTo: 3, f: 0.05, m: 0.1, c: 0.2 },
  { upTo: 6, f: 0.05, m: 0.1, c: 0.3, v: 0.5 },
  { upTo: 30, f: 0.1, m: 0.2, c: 0.5, v: 1 },
  { upTo: 120, f: 0.15, m: 0.3, c: 0.8, v: 1.5 },
  { upTo: 400, f: 0.2, m: 0.5, c: 1.2, v: 2.5 },
  { upTo: 1000, f: 0.3, m: 0.8, c: 2, v: 4 },
  { upTo: 2000, f: 0.5, m: 1.2, c: 3, v: 6 },
  { upTo: 4000, m: 2, c: 4, v: 8 },
];

/** Tolerance of a length that nobody has given one, ± mm. */
export const generalTolerance = figure({
  name: "general-tolerance",
  about: "the tolerance of a length that has none of its own",
  inputs: {
    size: quantity("the length", "length", [0.5, 4000, "mm"]),
    class: otherwise(choice("fine, medium, coarse or very coarse", classes), "m"),
  },
  formula: "table by size and class",
  source: "ISO 2768-1, table 1; f of 120 to 400 mm and m of 30 to 400 mm from memory.",
  range: "0.5 to 4000 mm; refuses others, and sizes that the class leaves out.",
  caution: "For brackets and made-up parts. A car body has the maker's own dimensions.",
  compute: (given) => {
    const size = valueIn(given.size, "mm");
    const value = rows.find(({ upTo }) => size <= upTo)?.[given.class];
    if (value === undefined)
      throw new Refusal("refused", `ISO 2768-1 class ${given.class} has no value for ${size} mm`, [
        "f ends at 2000 mm; v begins above 3 mm.",
      ]);
    return { results: [{ name: "tolerance ±", value, unit: "mm" }] };
  },
});
