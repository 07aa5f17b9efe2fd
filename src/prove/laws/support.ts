import { changeKey } from "../../model/world.js";
import { type Breach, type Law, type Moment, breachIf } from "../law.js";
import { lacking } from "../needs.js";
import { openJoints } from "../joints.js";

/** Law 13: while a structural joint is open the car stands as the range says, and is not moved; gaps are compared after. */
export const support: Law = {
  law: 13,
  code: "support",
  name: "Support",
  before: (moment) => [...opening(moment), ...standing(moment), ...comparing(moment)],
  end: (world, state) => {
    const opened = [...state.welds].some(
      ([key, welds]) => welds.opened && world.things.get(key)?.structural === true,
    );
    const missing = (world.structural?.compare ?? []).filter(
      (key) => !state.worked.get(key)?.has("compared"),
    );
    return opened
      ? missing.map((key) => ({ message: `'${key}' is never compared after the last weld` }))
      : [];
  },
};

function opening({ world, state, change, thing }: Moment): Breach[] {
  if (thing.structural !== true || !["drill", "separate"].includes(change.verb)) return [];
  const rule = world.structural;
  if (!rule)
    return [
      { message: "the range does not say how the car stands while a structural joint is open" },
    ];
  const unmeasured = rule.compare.filter((key) => !state.worked.get(key)?.has("measured"));
  return [
    ...lacking(rule.needs, state).map(({ key, state: wanted, origin }) => ({
      message: `'${changeKey(change)}' opens a structural joint, and '${key}' is not ${wanted}`,
      related: [{ origin, label: "asked for here" }],
    })),
    ...unmeasured.map((key) => ({
      message: `'${changeKey(change)}' opens a structural joint, and '${key}' is not measured`,
    })),
  ];
}

const moving = ["raise", "lower", "unbrace"];

/** The car is not moved, and nothing that it stands on or is braced with is taken away. */
function standing({ world, state, change, effect, thing }: Moment): Breach[] {
  const asked = world.structural?.needs.some(({ key }) => key === thing.key) === true;
  const away = asked && ["end", "restore", "on"].includes(effect);
  const open = away || moving.includes(change.verb) ? openJoints(world, state) : [];
  return open.map(({ key }) => ({
    message: `'${changeKey(change)}' while the structural joint '${key}' is open`,
  }));
}

function comparing({ world, state, change, thing }: Moment): Breach[] {
  const early =
    change.verb === "compare" &&
    world.structural?.compare.includes(thing.key) === true &&
    openJoints(world, state).length > 0;
  return breachIf(early, `'${changeKey(change)}' comes before the last structural joint is welded`);
}
