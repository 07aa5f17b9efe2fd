import { breachIf, type Law } from "../law.js";

/** Law 5: a fixing that is used once never goes back. */
export const oneUse: Law = {
  law: 5,
  code: "one-use",
  name: "One use",
  before: ({ thing, effect, change }) =>
    breachIf(
      effect === "in" && thing.fixing?.oneUse === true && (change.fresh ?? 0) < (change.count ?? 0),
      `'${thing.key}' is used once: all ${change.count} must be new, not ${change.fresh ?? 0}`,
    ),
};
