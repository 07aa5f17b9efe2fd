import { otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";
import { roundOf } from "./wire.js";

/** Sealer or adhesive that a round bead takes, mL and cartridges. */
export const bead = figure({
  name: "bead",
  about: "the seam sealer or adhesive that a bead takes",
  inputs: {
    length: quantity("length of the bead", "length", [0.01, 200, "m"]),
    width: quantity("diameter of the bead", "length", [1, 25, "mm"]),
    cartridge: otherwise(
      quantity("what one cartridge holds", "volume", [20, 1000, "mL"]),
      "310 mL",
    ),
  },
  formula: "V = π/4 · d² · L; cartridges = ⌈V / cartridge⌉",
  source: "Computed from the volume; 310 mL is a common cartridge, practice without a source.",
  range: "Beads of 1 to 25 mm; refuses others. What stays in the nozzle comes on top.",
  compute: (given) => {
    const volume = (roundOf(given.width) * valueIn(given.length, "mm")) / 1000;
    const cartridges = Math.ceil(volume / valueIn(given.cartridge, "mL") - 1e-9);
    return {
      results: [
        { name: "amount", value: volume, unit: "mL" },
        { name: "cartridges", value: cartridges, unit: "1" },
      ],
    };
  },
});
