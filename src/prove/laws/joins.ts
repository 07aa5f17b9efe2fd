import { breachIf, type Law } from "../law.js";
import { unmet } from "../needs.js";

/** Law 6: every plug parted is joined and tested, every supply isolated is restored. */
export const joins: Law = {
  law: 6,
  code: "joins",
  name: "Joins and supplies",
  before: (moment) => {
    const { state, thing, effect } = moment;
    const joining = effect === "part-join" || effect === "make-join";
    const live = joining && thing.supply !== undefined && !state.isolated.has(thing.supply);
    const dead =
      effect === "prove" && thing.supply !== undefined && state.isolated.has(thing.supply);
    return [
      ...unmet(moment, 6),
      ...breachIf(live, `'${thing.key}' is parted or joined while '${thing.supply}' is live`),
      ...breachIf(dead, `'${thing.key}' is tried while '${thing.supply}' is isolated`),
      ...breachIf(
        effect === "part-join" && state.parted.has(thing.key),
        `'${thing.key}' is parted already`,
      ),
      ...breachIf(
        effect === "make-join" && !state.parted.has(thing.key),
        `'${thing.key}' is joined already`,
      ),
      ...breachIf(
        effect === "isolate" && state.isolated.has(thing.key),
        `'${thing.key}' is isolated already`,
      ),
      ...breachIf(
        effect === "restore" && !state.isolated.has(thing.key),
        `'${thing.key}' is live already`,
      ),
    ];
  },
  end: (world, state) => [
    ...at(world, state.parted, "was parted and never joined again"),
    ...at(
      world,
      new Set([...state.unproven].filter((key) => !state.parted.has(key))),
      "was parted and its function never tested",
    ),
    ...at(world, state.isolated, "was isolated and never restored"),
  ],
};

function at(
  world: Parameters<NonNullable<Law["end"]>>[0],
  keys: ReadonlySet<string>,
  what: string,
) {
  return [...keys].map((key) => {
    const origin = world.things.get(key)?.origin;
    return {
      message: `'${key}' ${what}`,
      ...(origin ? { related: [{ origin, label: "this one" }] } : {}),
    };
  });
}
