import { changeKey, keyOf } from "../../model/world.js";
import type { Law } from "../law.js";

/** Law 7: no step behind a hold starts before its release, and a trainee releases none. */
export const holds: Law = {
  law: 7,
  code: "holds",
  name: "Holds",
  before: ({ world, state, change, thing, effect }) => {
    const gates = world.gates.get(changeKey(change)) ?? [];
    const closed = gates.filter((hold) => !state.released.has(hold));
    const trainee = effect === "release" && thing.role === "trainee";
    return [
      ...closed.map((hold) => ({
        message: `'${changeKey(change)}' stands behind the hold '${hold}', which is not released`,
      })),
      ...(trainee ? [{ message: `a trainee cannot release '${thing.key}'` }] : []),
    ];
  },
  end: (world, state) =>
    world.duties
      .filter(
        ({ change }) =>
          ["hold", "decide", "witness"].includes(change.verb) &&
          !state.released.has(keyOf(change.object, change.place)),
      )
      .map(({ change, origin }) => ({
        message: `the hold '${change.object}' is not in the plan`,
        related: [{ origin, label: "asked for here" }],
      })),
};
