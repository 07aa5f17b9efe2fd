import { isOf } from "../../model/verbs.js";
import { changeKey } from "../../model/world.js";
import { type Breach, type Law, type Moment, breachIf } from "../law.js";
import { lacking } from "../needs.js";

/** Law 9: before sparks all is made safe, and after the last spark the fire is watched for its full time. */
export const hotWork: Law = {
  law: 9,
  code: "hot-work",
  name: "Hot work",
  before: (moment) => [...beforeSparks(moment), ...whileWatched(moment)],
  end: (_, state) =>
    breachIf(state.hot, "sparks have flown and no fire watch of the full time follows"),
};

function beforeSparks({ world, state, change }: Moment): Breach[] {
  if (!isOf(change.verb, "hot")) return [];
  if (!world.hot) return [{ message: "the range does not say what must be so before hot work" }];
  return lacking(world.hot.needs, state).map(({ key, state: wanted, origin }) => ({
    message: `'${changeKey(change)}' makes sparks, and '${key}' is not ${wanted}`,
    related: [{ origin, label: "asked for here" }],
  }));
}

/** Until the watch is over nothing is closed in, and no supply comes back. */
function whileWatched({ state, change, effect, thing }: Moment): Breach[] {
  const bolted = effect === "fit-new" && thing.weldedBy.length === 0;
  const closing = bolted || ["on", "settle", "restore"].includes(effect);
  return breachIf(
    closing && state.hot,
    `'${changeKey(change)}' comes before the fire watch is over`,
  );
}
