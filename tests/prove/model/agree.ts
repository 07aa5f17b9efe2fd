import type { Step } from "../../../src/model/plan.js";
import type { World } from "../../../src/model/world.js";
import { prove } from "../../../src/prove/prove.js";
import { numbers, violated } from "./laws.js";

/** Two judges of the same plans, and how often each said what. */
export class Assize {
  plans = 0;
  proven = 0;
  /** Per law: the plans that both find breaking it. */
  readonly broken = new Map(numbers.map((law) => [law, 0]));
  readonly disagreements: string[] = [];

  hear(world: World, steps: readonly Step[]): void {
    const laws = prove(world, steps).laws.filter((one) => !one.held);
    const theirs = new Set(laws.map(({ law }) => law));
    const ours = violated(world, steps);
    this.plans += 1;
    if (theirs.size === 0) this.proven += 1;
    for (const law of ours) this.broken.set(law, (this.broken.get(law) ?? 0) + 1);
    const apart = numbers.filter((law) => theirs.has(law) !== ours.has(law));
    if (apart.length > 0) this.disagreements.push(`law ${apart.join(", ")}: ${rowOf(steps)}`);
  }

  /** One line of numbers for the reader of the run. */
  line(name: string): string {
    const laws = [...this.broken].map(([law, n]) => `${law}:${n}`).join(" ");
    const apart = this.disagreements.length;
    return `${name}: ${this.plans} plans, ${this.proven} proven by both, ${apart} judged differently; broken by law ${laws}\n`;
  }

  add(other: Assize): void {
    this.plans += other.plans;
    this.proven += other.proven;
    for (const [law, n] of other.broken) this.broken.set(law, (this.broken.get(law) ?? 0) + n);
    this.disagreements.push(...other.disagreements);
  }
}

/** A plan in one row, to be read where the judges differ. */
function rowOf(steps: readonly Step[]): string {
  const words = steps.flatMap(({ does, night, wait }) =>
    does.map(({ verb, object, count, fresh, minutes }) =>
      [verb, object, count, fresh === undefined ? undefined : `(${fresh} new)`, minutes]
        .concat(night ? "night" : undefined, wait === "" ? undefined : "waits")
        .filter((word) => word !== undefined)
        .join(" "),
    ),
  );
  return words.join(", ");
}
