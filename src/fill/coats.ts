import type { Brief, Step } from "../model/plan.js";
import { asksToWait } from "./look-up.js";

/** A coat or sealer as a step lays it on: the product, and where it goes. */
export interface Coat {
  n: string;
  where: string;
  name: string;
}

/** The coats and sealers of a job: each as it is laid on, in order, and each product with all its places. */
export interface Coats {
  laid: Coat[];
  products: { name: string; at: Coat[] }[];
}

/** Gathers what dries or cures for a time that only its own sheet tells: measured out, and waited for at one step at least. */
export function coatsOf({ consumables, things }: Brief, steps: readonly Step[]): Coats {
  const uses = ({ uses: used }: Step, id: string): boolean =>
    used.some(({ consumable }) => consumable === id);
  const products = consumables.filter(
    ({ id, unit }) => unit !== "pieces" && steps.some((step) => uses(step, id) && asksToWait(step)),
  );
  const laid = steps.flatMap((step) => {
    const where = step.touches.map((object) => things[object] ?? object).join(", ");
    const mine = products.filter(({ id }) => uses(step, id));
    return mine.map(({ name }) => ({ n: step.n, where, name }));
  });
  const names = [...new Set(laid.map(({ name }) => name))];
  return {
    laid,
    products: names.map((name) => ({ name, at: laid.filter((coat) => coat.name === name) })),
  };
}
