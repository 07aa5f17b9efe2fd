import { isOf } from "../../model/verbs.js";
import { changeKey } from "../../model/world.js";
import { type Breach, type Law, type Moment, breachIf } from "../law.js";
import { lacking } from "../needs.js";
import { openJoints } from "../joints.js";

/** Law 10: what must cure has its wait in the plan, and no night stop lies where the work is not safe to leave. */
export const waiting: Law = {
  law: 10,
  code: "waiting",
  name: "Waiting",
  before: (moment) => [...wet(moment), ...night(moment)],
};

function wet({ step, change }: Moment): Breach[] {
  const curing = isOf(change.verb, "wet") && step.wait === "";
  return breachIf(curing, `'${changeKey(change)}' says no time to wait after it`);
}

function night({ world, state, step, change }: Moment): Breach[] {
  if (!step.night) return [];
  if (change.verb !== "pause")
    return [{ message: "a night stop stands on a step that is no pause" }];
  const trial = [...state.parts].some(([, now]) => now === "trial");
  const open = openJoints(world, state).length > 0;
  const loose = open ? lacking(world.structural?.needs ?? [], state) : [];
  return [
    ...breachIf(state.hot, "a night stop lies inside the fire watch"),
    ...breachIf(trial, "a night stop lies inside a trial fit"),
    ...loose.map(({ key, state: wanted }) => ({
      message: `a night stop lies where a structural joint is open and '${key}' is not ${wanted}`,
    })),
  ];
}
