import { breachIf, type Law } from "../law.js";

/** Law 11: a trial fit balances by itself, and nothing is welded or closed in between. */
export const trialFit: Law = {
  law: 11,
  code: "trial-fit",
  name: "Trial fits",
  before: ({ state, thing, effect, change }) => {
    const closing = ["weld", "tack", "seal", "paint"].includes(change.verb) || effect === "on";
    if (!closing && effect !== "try-in" && effect !== "take-out") return [];
    const trial = [...state.parts].filter(([, now]) => now === "trial").map(([key]) => key);
    return [
      ...breachIf(
        effect === "try-in" && state.parts.get(thing.key) !== "off",
        `the ${thing.words} is not off, so it cannot be tried in`,
      ),
      ...breachIf(
        effect === "take-out" && !trial.includes(thing.key),
        `the ${thing.words} is not in on trial`,
      ),
      ...breachIf(
        closing && trial.length > 0,
        `'${change.verb}' while ${trial.join(" and ")} is in on trial`,
      ),
    ];
  },
  end: (_, state) =>
    [...state.parts]
      .filter(([, now]) => now === "trial")
      .map(([key]) => ({ message: `'${key}' is left in on trial` })),
};
