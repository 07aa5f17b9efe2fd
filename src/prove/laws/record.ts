import { isOf } from "../../model/verbs.js";
import { changeKey } from "../../model/world.js";
import type { Breach, Law } from "../law.js";
import { breachIf } from "../law.js";

/** Law 8: what must be measured or marked is recorded before the step that makes it impossible. */
export const record: Law = {
  law: 8,
  code: "record",
  name: "Record before destroy",
  before: ({ world, state, change, thing }): Breach[] => {
    if (!isOf(change.verb, "destroys") || !["joint", "part"].includes(thing.is)) return [];
    const missing = world.records.filter((one) => !state.done.has(changeKey(one.change)));
    return [
      ...breachIf(
        world.records.length === 0,
        `'${changeKey(change)}' destroys, and nothing is recorded before`,
      ),
      ...missing.map((one) => ({
        message: `'${changeKey(change)}' comes before '${changeKey(one.change)}', which it makes impossible`,
        related: [{ origin: one.origin, label: "recorded here" }],
      })),
    ];
  },
};
