import type { Law } from "../law.js";
import { breachIf } from "../law.js";
import { isAway } from "../state.js";

/** Law 3: at the end every part that came off is on, renewed, or left off on purpose with a reason. */
export const returns: Law = {
  law: 3,
  code: "return",
  name: "Return",
  before: ({ state, thing, effect, change }) => {
    const now = state.parts.get(thing.key) ?? "on";
    return [
      ...breachIf(
        ["off", "cut-off"].includes(effect) && !["on", "eased"].includes(now),
        `the ${thing.words} is not on, so it cannot come off`,
      ),
      ...breachIf(
        ["on", "fit-new"].includes(effect) && now === "on",
        `the ${thing.words} is on already`,
      ),
      ...breachIf(effect === "ease" && now !== "on", `the ${thing.words} is not in its place`),
      ...breachIf(effect === "settle" && now !== "eased", `the ${thing.words} was not eased`),
      ...breachIf(
        effect === "leave-off" && !isAway(state, thing.key),
        `the ${thing.words} is not off, so it cannot be left off`,
      ),
      ...breachIf(
        effect === "leave-off" && (change.reason ?? "") === "",
        `the ${thing.words} is left off without a reason`,
      ),
    ];
  },
  end: (world, state) => [
    ...[...world.things.values()]
      .filter((thing) => ["off", "eased", "gone"].includes(state.parts.get(thing.key) ?? "on"))
      .map((thing) => ({
        message: `the ${thing.words} ('${thing.key}') came off and never goes back`,
        hints: ["Put it back, or leave it off on purpose with a reason."],
        related: [{ origin: thing.origin, label: "this part" }],
      })),
    ...[...world.things.values()]
      .filter(({ key }) => state.parts.get(key) === "absent" && world.needs.has(`fit-new ${key}`))
      .map((thing) => ({
        message: `the ${thing.words} ('${thing.key}') was missing and no new one is fitted`,
        hints: ["Fit a new one, or leave it off on purpose with a reason."],
        related: [{ origin: thing.origin, label: "this part" }],
      })),
  ],
};
