import { arrange } from "../../../src/arrange/arrange.js";
import { findJob } from "../../../src/find/find-job.js";
import { fittedOf } from "../../../src/find/fitted.js";
import type { Found } from "../../../src/model/generated/car.js";
import type { Step } from "../../../src/model/plan.js";
import type { World } from "../../../src/model/world.js";
import { parse } from "../../../src/read/parse.js";
import { resolve } from "../../../src/resolve/resolve.js";
import { validate } from "../../../src/validate/validate.js";
import { opened, small } from "../../plans.js";
import type { Seed } from "./made.js";
import { rangeOf } from "./made-range.js";
import { recipesOf } from "./made-recipes.js";

const { words } = opened(small);

const shop = {
  catalog: "shop",
  roles: {
    foreman: { name: "foreman", releases: true },
    inspector: { name: "inspector", releases: true, independent: true },
  },
};

/** A made-up job as the prover gets it: the world, and the steps that the program derived. */
export interface MadeJob {
  world: World;
  steps: Step[];
}

/** Writes the files of a made-up job, and reads, resolves and arranges them as those of a real one. */
export function jobOf(seed: Seed): MadeJob {
  const files: [string, object][] = [
    ["common/shop.yaml", shop],
    ["made/range.yaml", rangeOf(seed)],
    ...recipesOf(seed).map((text, i): [string, object] => [`made/r/${i}.yaml`, text]),
  ];
  const sources = files.flatMap(([file, text]) => parse(file, JSON.stringify(text)).value ?? []);
  const { value: library, diagnostics } = validate(sources);
  const bad = diagnostics.find(
    (one) => one.code.startsWith("schema") || one.code === "wrong-object",
  );
  if (!library || bad) throw new Error(bad?.message ?? diagnostics[0]?.message ?? "no library");
  const job = findJob(library, seed.job === "strip" ? "made/r0" : "made/work", "made", {}).value;
  if (!job) throw new Error("no such job");
  const { fitted } = fittedOf(job.range.data, {});
  const found = seed.parts.flatMap((one, i) => foundOf(one, i));
  const { value, diagnostics: unsolved } = resolve({
    ...job,
    catalog: library.catalog,
    fitted,
    found,
    words,
  });
  if (!value || unsolved[0]) throw new Error(unsolved[0]?.message ?? "it does not resolve");
  return { world: value.world, steps: arrange(value.tasks).steps };
}

function foundOf({ screws, found }: Seed["parts"][number], i: number): Found[] {
  const of = { fixing: `s${i}`, note: "as found" };
  if (screws === 0 || found === "as made") return [];
  if (found === "extra") return [{ ...of, extra: 1 }];
  return [found === "missing" ? { ...of, present: screws - 1 } : { ...of, damaged: 1 }];
}
