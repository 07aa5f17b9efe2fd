import { figure } from "./rule.js";
import { proofLoadOf, strength } from "./strength.js";
import { thread } from "./thread.js";

/** Proof load of a bolt: the tension that it bears without lasting stretch, N. */
export const proofLoad = figure({
  name: "proof-load",
  about: "the tension that a bolt bears without lasting stretch",
  inputs: { thread, class: strength },
  formula: "Fp = As · Sp, stress area times proof stress",
  source:
    "ISO 898-1, proof stress and stress area (8.8 and 4.6 from memory); SAE J429, as Shigley, Mechanical Engineering Design, 9th ed., tables 8-9 and 8-11.",
  range:
    "ISO classes on M3 to M20, SAE grades on 1/4 to 3/4 in; refuses other pairs. The standard's own table is rounded and differs by up to 1 %.",
  compute: (given) => ({
    results: [{ name: "proof load", value: proofLoadOf(given.thread, given.class), unit: "N" }],
  }),
});
