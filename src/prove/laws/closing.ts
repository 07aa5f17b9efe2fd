import { breachIf, type Law } from "../law.js";
import { type World, changeKey } from "../../model/world.js";
import type { State } from "../state.js";

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
    ...breachIf(isGoneOn(world, state), "work goes on after the last line is signed"),
  ],
};

function isGoneOn(world: World, state: State): boolean {
  const lines = world.duties
    .filter(({ change }) => change.verb === "sign")
    .map(({ change }) => changeKey(change));
  return lines.some((line) => state.done.has(line)) && !lines.includes(state.last ?? "");
}
