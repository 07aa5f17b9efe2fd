import { fractionOf, nearestDrill } from "./inch.js";
import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";

/** The usual metric drill nearest to a size, and by how much it misses. */
export const inchDrill = figure({
  name: "inch-drill",
  about: "the metric drill nearest to an inch size",
  inputs: { size: quantity("the size", "length", [0.5, 50, "mm"]) },
  formula: "size · 25.4, to the nearest 0.5 mm; error = drill − size",
  source:
    "NIST SP 811, appendix B.8, 1 in = 25.4 mm; steps of 0.5 mm are the common set of drills.",
  range: "0.75 to 14.25 mm; refuses others.",
  caution: "A plug weld or a thread wants the size itself: see whether the error may stand.",
  compute: (given) => {
    const size = valueIn(given.size, "mm");
    const drill = nearestDrill(size);
    if (drill === undefined)
      throw new Refusal("refused", `no drill from 1 to 14 mm is near ${size.toPrecision(4)} mm`);
    return {
      results: [
        { name: "inch", value: `${fractionOf(size / 25.4)} in` },
        { name: "size", value: size, unit: "mm" },
        { name: "drill", value: drill, unit: "mm" },
        { name: "error", value: drill - size, unit: "mm" },
      ],
    };
  },
});
