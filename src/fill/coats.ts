import type { Brief, Step } from "../model/plan.js";
import { asksToWait } from "./look-up.js";

/** A product that dries or cures for a time that only its own sheet tells, and where it goes. */
export interface Coat {
  name: string;
  at: { n: string; where: string }[];
}

/** The coats and sealers of a job: what is measured out, and waited for at one of its steps at least. */
export function coatsOf({ consumables, things }: Brief, steps: readonly Step[]): Coat[] {
  return consumables.flatMap(({ id, name, unit }) => {
    const mine = steps.filter(({ uses }) => uses.some(({ consumable }) => consumable === id));
    if (unit === "pieces" || !mine.some(asksToWait)) return [];
    const where = ({ touches }: Step): string =>
      touches.map((object) => things[object] ?? object).join(", ");
    return [{ name, at: mine.map((step) => ({ n: step.n, where: where(step) })) }];
  });
}
