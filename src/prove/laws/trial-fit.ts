import { breachIf, type Law } from "../law.js";
import { isAway } from "../state.js";

const closingVerbs = new Set(["weld", "tack", "close", "seal", "paint"]);

/** Law 11: a trial fit balances by itself, and nothing is welded or closed in between. */
export const trialFit: Law = {
  law: 11,
  code: "trial-fit",
  name: "Trial fits",
  before: ({ state, thing, effect, change }) => {
    const closing = closingVerbs.has(change.verb) || ["on", "fit-new", "settle"].includes(effect);
    if (!closing && effect !== "try-in" && effect !== "take-out") return [];
    const trial = [...state.parts].filter(([, now]) => now === "trial").map(([key]) => key);
    return [
      ...breachIf(
        effect === "try-in" && !isAway(state, thing.key),
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
