import { recipesFor } from "../../src/find/find-job.js";
import type { Step } from "../../src/model/plan.js";
import { type Job, jobsOf, opened, own, small } from "../plans.js";
import { type Bench, benchOf } from "./bench.js";
import { type Pairs, pairsOf } from "./pairs.js";

/** A job with all that its mutants need. */
export interface Trial extends Bench {
  job: Job;
  why: Pairs;
}

/** Every job of the library on every car, and two of the small library; the same plan is tried once. */
export function trials(): Trial[] {
  const [library, other] = [opened(own), opened(small)];
  const others = ["floor-paint", "carpet"].flatMap((job) =>
    ["manual", "powered"].map((seats) => ({
      name: `${job} with ${seats} seats`,
      ask: { job, fitted: { seats } },
    })),
  );
  const seen = new Set<string>();
  return [
    ...jobsOf(library).map((job) => ({ from: library, job })),
    ...others.map((job) => ({ from: other, job })),
  ].flatMap(({ from, job }) => {
    const bench = benchOf(from, job.ask);
    const plan = JSON.stringify(bench.steps.map(({ id, does }) => [id, does]));
    if (seen.has(plan)) return [];
    seen.add(plan);
    return from.library.ranges.slice(0, 1).map((range) => {
      const recipes = recipesFor(from.library, range).map((recipe) => recipe.data);
      return { ...bench, job, why: pairsOf(range.data, recipes, bench.fitted) };
    });
  });
}

/** Every pair of neighbours of one phase, with the place of the first. */
export function neighbours({ steps }: Bench): [number, Step, Step][] {
  return steps.flatMap((a, i): [number, Step, Step][] => {
    const b = steps[i + 1];
    return b ? [[i, a, b]] : [];
  });
}

/** Mutants tried and caught, and those that got through, by name. */
export class Tally {
  tried = 0;
  readonly passed: string[] = [];
  private readonly kind: string;

  constructor(kind: string) {
    this.kind = kind;
  }

  add(name: string, codes: readonly string[], wanted: readonly string[]): void {
    this.tried += 1;
    if (!codes.some((code) => wanted.includes(code))) this.passed.push(`${name}: ${codes.join()}`);
  }

  tell(): void {
    const caught = this.tried - this.passed.length;
    process.stdout.write(`${this.kind}: ${this.tried} tried, ${caught} caught\n`);
  }
}
