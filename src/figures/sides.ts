import { decisionSource, judged, tolerance, uncertainty } from "./decision.js";
import { quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

const side = (which: string) =>
  quantity(`the ${which} gap, height or length, as measured`, "length", [0, 6000, "mm"]);

/** Whether a gap, height or length is the same on both sides, given how surely each was measured. */
export const sides = figure({
  name: "sides",
  about: "whether the left and the right measurement agree",
  inputs: { left: side("left"), right: side("right"), tolerance, uncertainty },
  formula:
    "Δ = |left − right|, U = √2 · u; good where Δ + U ≤ tolerance, bad where Δ − U > tolerance",
  source: `${decisionSource} The tolerance is the maker's or the shop's, entered.`,
  range: "0 to 6 m; refuses others.",
  compute: (given) => {
    const difference = Math.abs(valueIn(given.left, "mm") - valueIn(given.right, "mm"));
    const doubt = Math.SQRT2 * valueIn(given.uncertainty, "mm");
    return { results: judged(difference, doubt, valueIn(given.tolerance, "mm")) };
  },
});
