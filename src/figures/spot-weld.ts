import { valueIn } from "./quantity.js";
import { Refusal } from "./refusal.js";
import { figure } from "./rule.js";
import { sheet, weldCaution } from "./sheet.js";
import { nominalSpotShearOf, spotWeldOf } from "./spot-table.js";

/** Nugget, minimum pitch, overlap and shear strength of a resistance spot weld, by sheet. */
export const spotWeld = figure({
  name: "spot-weld",
  about: "nugget, least pitch and shear strength of a spot weld, by sheet",
  inputs: { sheet },
  formula:
    "class A schedule by the thinner sheet, shear and nugget between its rows, pitch and overlap from the thicker row; nugget 3.5·√t to 5·√t; nominal shear 144·t^1.47 kip, t in inch",
  source:
    "Optimum schedule for low-carbon steel SAE 1010, layout of the RWMA class A table; ISO 14373, nugget, from memory; AISI S100-07 E2.6, nominal shear, from memory.",
  range: "0.5 to 3.2 mm, bare low-carbon steel; refuses other thicknesses.",
  caution: weldCaution,
  compute: (given) => {
    const t = valueIn(given.sheet, "mm");
    const weld = spotWeldOf(t);
    if (weld === undefined)
      throw new Refusal("refused", `the class A schedule ends at 0.125 in, below ${t} mm`);
    return {
      results: [
        { name: "nugget", value: weld.nugget, unit: "mm" },
        { name: "nugget by ISO", value: 3.5 * Math.sqrt(t), to: 5 * Math.sqrt(t), unit: "mm" },
        { name: "least pitch", value: weld.pitch, unit: "mm" },
        { name: "least overlap", value: weld.overlap, unit: "mm" },
        { name: "least shear", value: weld.shear, unit: "N" },
        { name: "nominal shear", value: nominalSpotShearOf(t), unit: "N" },
      ],
      notes: [
        "Least shear is what a schedule must reach; nominal shear is a design code's own value. They mean different things and do not mix.",
      ],
    };
  },
});
