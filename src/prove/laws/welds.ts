import { type Key, type World, changeKey } from "../../model/world.js";
import { type Breach, type Law, type Moment, breachIf } from "../law.js";
import type { State } from "../state.js";

/** Law 12: welds drilled out are put back, joint by joint, after a test piece was pulled apart and released. */
export const welds: Law = {
  law: 12,
  code: "welds",
  name: "Welds",
  before: (moment) =>
    moment.change.verb === "weld" && moment.thing.is === "joint" ? weld(moment) : [],
  end: (world, state) =>
    [...state.welds].flatMap(([key, { out, back }]) =>
      breachIf(
        out !== back,
        `'${key}': ${out} welds drilled out, ${back} put back`,
        placeOf(world, key),
      ),
    ),
};

function weld({ state, change, thing }: Moment): Breach[] {
  const { out = 0 } = state.welds.get(thing.key) ?? {};
  const holes = state.worked.get(thing.key)?.has("closed");
  return [
    ...breachIf(
      !tested(state),
      `'${changeKey(change)}' comes before a test piece was peeled and released`,
    ),
    ...breachIf(
      out > 0 && !holes,
      `'${changeKey(change)}' comes before the holes of '${thing.key}' are closed`,
    ),
  ];
}

function tested(state: State): boolean {
  return [...state.worked].some(
    ([key, worked]) => worked.has("peeled") && state.releasedFor.has(key),
  );
}

function placeOf(world: World, key: Key): Parameters<typeof breachIf>[2] {
  const thing = world.things.get(key);
  return thing && { origin: thing.origin, label: "this joint" };
}
