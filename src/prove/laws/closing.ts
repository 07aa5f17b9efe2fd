import { breachIf, type Law } from "../law.js";
import { changeKey } from "../../model/world.js";

/** Law 14: what the start opened the end closes, and the last line is signed. */
export const closing: Law = {
  law: 14,
  code: "closing",
  name: "Closing",
  before: ({ state, thing, effect }) => [
    ...breachIf(
      effect === "begin" && state.begun.has(thing.key),
      `the ${thing.words} is so already`,
    ),
    ...breachIf(
      effect === "end" && !state.begun.has(thing.key),
      `the ${thing.words} was never begun`,
    ),
  ],
  end: (world, state) => [
    ...[...state.begun].map((key) => ({
      message: `the ${world.things.get(key)?.words ?? key} is opened and never closed`,
    })),
    ...world.duties
      .filter(
        ({ change }) =>
          ["sweep", "sign"].includes(change.verb) && !state.done.has(changeKey(change)),
      )
      .map(({ change, origin }) => ({
        message: `'${changeKey(change)}' is never done`,
        related: [{ origin, label: "asked for here" }],
      })),
  ],
};
