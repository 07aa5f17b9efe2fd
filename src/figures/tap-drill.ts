import { fractionOf } from "./inch.js";
import { figure } from "./rule.js";
import { thread } from "./thread.js";

/** Tap drill: nominal diameter less one pitch, mm. */
export const tapDrill = figure({
  name: "tap-drill",
  about: "the hole to drill before a thread is cut",
  inputs: { thread },
  formula: "d − P, which leaves 77 % of the full thread",
  source:
    "ISO 2306, drills for use prior to tapping, from memory; the same rule in a workshop tap-drill chart.",
  range:
    "M3 to M20 and #8 to 3/4 in; refuses other threads. For cutting taps, not for forming taps.",
  caution:
    "A thread in sheet holds only what its few turns hold: body sheet takes a weld nut, a cage nut or a rivet nut instead.",
  compute: ({ thread: { diameter, pitch } }) => {
    const drill = diameter - pitch;
    return {
      results: [
        { name: "drill", value: drill, unit: "mm" },
        { name: "nearest 1/64", value: `${fractionOf(Math.round((drill / 25.4) * 64) / 64)} in` },
      ],
    };
  },
});
