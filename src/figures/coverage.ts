import { number, otherwise, quantity } from "./input.js";
import { valueIn } from "./quantity.js";
import { figure } from "./rule.js";

/** Spreading rate, wet film and amount of a coating, from its own data sheet. */
export const coverage = figure({
  name: "coverage",
  about: "how much coating an area takes",
  inputs: {
    area: quantity("area to coat", "area", [0.001, 100, "m²"]),
    film: quantity("dry film of one coat, from the product's sheet", "length", [5, 2000, "µm"]),
    solids: number("solids by volume in percent, from the product's sheet", 5, 100),
    coats: otherwise(number("coats", 1, 10, { whole: true }), "1"),
    loss: otherwise(number("share lost on the way, 0 to 0.8", 0, 0.8), "0"),
  },
  formula:
    "rate = 10 · VS / DFT (m²/L, %, µm); wet film = DFT · 100 / VS; amount = coats · area / rate / (1 − loss)",
  source:
    "Coating practice, theoretical spreading rate. Loss: brush or roller 10 to 15 %, airless spray 30 %, conventional spray 50 % not unusual, a coating maker's note.",
  range: "Dry film of 5 to 2000 µm, solids of 5 to 100 %; refuses others.",
  compute: (given) => {
    const film = valueIn(given.film, "µm");
    const rate = (10 * given.solids) / film;
    const amount = (given.coats * valueIn(given.area, "m²")) / rate / (1 - given.loss);
    return {
      results: [
        { name: "spreading rate", value: rate, unit: "m²/L" },
        { name: "wet film", value: (film * 100) / given.solids, unit: "µm" },
        { name: "amount", value: amount, unit: "L" },
      ],
    };
  },
});
