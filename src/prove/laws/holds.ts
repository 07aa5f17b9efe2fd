import { type World, changeKey, keyOf } from "../../model/world.js";
import type { Breach, Law } from "../law.js";
import type { State } from "../state.js";

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
  end: (world, state) => [
    ...world.duties
      .filter(
        ({ change }) =>
          ["hold", "decide", "witness"].includes(change.verb) &&
          !state.released.has(keyOf(change.object, change.place)),
      )
      .map(({ change, origin }) => ({
        message: `the hold '${change.object}' is not in the plan`,
        related: [{ origin, label: "asked for here" }],
      })),
    ...uninspected(world, state),
  ],
};

/** Critical work ends inspected by somebody who did not do it. */
function uninspected(world: World, state: State): Breach[] {
  return [...state.handled]
    .flatMap((key) => world.things.get(key) ?? [])
    .filter(({ critical, structural }) => critical !== undefined || structural === true)
    .filter(({ key }) => !state.inspected.has(key) && state.parts.get(key) !== "left-off")
    .map(({ key, origin }) => ({
      message: `'${key}' is critical, and nobody who did not do the work inspects it`,
      related: [{ origin, label: "this one" }],
    }));
}
