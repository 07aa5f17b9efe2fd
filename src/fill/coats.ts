import type { Brief, Step } from "../model/plan.js";
import { asksToWait } from "./look-up.js";

/** A product that dries or cures for a time that only its own sheet tells, and where it goes. */
export interface Coat {
  name: string;
  at: { n: string; where: string }[];
}

/** The coats and sealers of a job in the order of their first use: what is measured out, and waited for at one of its steps at least. */
export function coatsOf({ consumables, things }: Brief, steps: readonly Step[]): Coat[] {
  const coats = consumables.flatMap(({ id, name, unit }) => {
    const mine = steps.filter(({ uses }) => uses.some(({ consumable }) => consumable === id));
    if (unit === "pieces" || !mine.some(asksToWait)) return [];
    const where = ({ touches }: Step): string =>
      touches.map((object) => things[object] ?? object).join(", ");
    const at = mine.map((step) => ({ n: step.n, where: where(step) }));
    return [{ name, at, first: steps.findIndex((step) => mine.includes(step)) }];
  });
  return coats.sort((a, b) => a.first - b.first).map(({ name, at }) => ({ name, at }));
}

/** The same coats as they are laid on, one after the other. */
export function inOrder(
  coats: readonly Coat[],
  steps: readonly Step[],
): (Coat["at"][number] & { name: string })[] {
  return steps.flatMap(({ n }) =>
    coats.flatMap(({ name, at }) =>
      at.filter((one) => one.n === n).map((one) => ({ ...one, name })),
    ),
  );
}
