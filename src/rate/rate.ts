import type { Step } from "../model/plan.js";
import type { Rating } from "../model/rating.js";
import { putsOn } from "../model/verbs.js";
import { features } from "./features.js";

/** Rates every step of the way back by the published features that it shows; the most come first. */
export function rate(steps: readonly Step[]): Rating[] {
  const rated = steps.filter(
    ({ phase, hold, checks }) =>
      ["refit", "close"].includes(phase) && hold === undefined && checks.length === 0,
  );
  const ratings = rated.map((step): Rating => {
    const shown = features.filter((feature) => feature.has({ step, steps, rated }));
    const hides = steps
      .slice(steps.indexOf(step) + 1)
      .find((one) => putsOn(one) && hidesIt(one, step));
    return {
      id: step.id,
      features: shown.map(({ name }) => name),
      ...(hides ? { hiddenBy: hides.n } : {}),
    };
  });
  return ratings.sort((a, b) => b.features.length - a.features.length);
}

function hidesIt(one: Step, step: Step): boolean {
  return one.hides.some((key) => step.touches.includes(key));
}
