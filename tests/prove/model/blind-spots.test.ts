import { describe, expect, it } from "vitest";
import type { Step } from "../../../src/model/plan.js";
import type { Change } from "../../../src/model/world.js";
import { prove } from "../../../src/prove/prove.js";
import { violated } from "./laws.js";
import { type MadeJob, jobOf } from "./made-job.js";
import { bench, plain } from "./orders.js";

const part = { ...plain, screws: 2 };
const weld = jobOf({
  ...bench,
  job: "weld",
  parts: [part],
  structural: true,
  hiddenJoint: true,
  brace: true,
  reading: true,
});
const paint = jobOf({ ...bench, job: "paint", parts: [part], finish: ["primed"] });
const trial = jobOf({ ...bench, job: "trial", parts: [part], finish: ["primed"] });
const belt = jobOf({
  ...bench,
  parts: [{ ...part, plug: true, critical: true, check: "independent" }],
  everyJob: true,
});

/** A change written in by hand, behind the last step that makes another one. */
function after({ steps }: MadeJob, verb: string, ...does: Partial<Change>[]): Step[] {
  const i = steps.findLastIndex((step) => step.does.some((one) => one.verb === verb));
  const step = steps[i];
  if (!step) throw new Error(`no step does ${verb}`);
  const added = does.map((one): Step => {
    const change = { verb: "", object: "", place: "", ...one };
    return { ...step, verb: change.verb, does: [change], wait: "a while" };
  });
  return steps.toSpliced(i + 1, 0, ...added);
}

interface Spot {
  name: string;
  job: MadeJob;
  steps: Step[];
  law: number;
}

// What the prover let pass before the model was held against it, one plan each.
const spots: Spot[] = [
  {
    name: "a part is said to be left off while it is on",
    job: paint,
    steps: after(paint, "hold", { verb: "leave-off", object: "box", reason: "in nobody's way" }),
    law: 3,
  },
  {
    name: "a part is cut out with its screws in",
    job: paint,
    steps: after(paint, "shield", { verb: "cut-out", object: "box" }),
    law: 1,
  },
  {
    name: "a surface is wiped while a part still hides it",
    job: paint,
    steps: after(paint, "undo", { verb: "wipe", object: "floor" }),
    law: 1,
  },
  {
    name: "a surface is bared again after its primer and covered so",
    job: paint,
    steps: after(paint, "prime", { verb: "bare", object: "floor" }),
    law: 2,
  },
  {
    name: "a mat is wiped with solvent between the vapour test and the sparks",
    job: weld,
    steps: after(weld, "separate", { verb: "wipe", object: "mat" }),
    law: 9,
  },
  {
    name: "the stands are cleared away while the joint is open, and set out again",
    job: weld,
    steps: after(
      weld,
      "separate",
      { verb: "clear-away", object: "stands" },
      { verb: "set-out", object: "stands" },
    ),
    law: 13,
  },
  {
    name: "the joint is opened once more after the gap was compared",
    job: weld,
    steps: after(
      weld,
      "compare",
      { verb: "drill", object: "seam", count: 1 },
      { verb: "close", object: "seam" },
      { verb: "weld", object: "seam", count: 1 },
    ),
    law: 13,
  },
  {
    name: "sparks fly after a watch, and nobody looked at the shields again",
    job: weld,
    steps: after(weld, "drill", { verb: "watch", object: "fire", minutes: 60 }),
    law: 9,
  },
  {
    name: "the holes are closed before they are drilled",
    job: weld,
    steps: weld.steps
      .filter(({ verb }) => verb !== "close")
      .flatMap((step) =>
        step.verb === "drill"
          ? [...weld.steps.filter(({ verb }) => verb === "close"), step]
          : [step],
      ),
    law: 12,
  },
  {
    name: "the welds are not counted",
    job: weld,
    steps: weld.steps.map((step) => ({
      ...step,
      does: step.does.map(({ count, ...rest }) =>
        rest.object === "seam" || count === undefined ? rest : { ...rest, count },
      ),
    })),
    law: 4,
  },
  {
    name: "a bolted part is fitted new inside a trial fit",
    job: trial,
    steps: after(trial, "try-in", { verb: "fit-new", object: "box" }),
    law: 11,
  },
  {
    name: "a plug of a critical part is parted and joined after the inspection",
    job: belt,
    steps: after(belt, "hold", { verb: "unplug", object: "w0" }, { verb: "plug-in", object: "w0" }),
    law: 7,
  },
  {
    name: "work goes on after the last line is signed",
    job: belt,
    steps: after(belt, "sign", { verb: "move", object: "p0", to: "back" }),
    law: 14,
  },
  {
    name: "a night stop stands on a step at which nobody pauses",
    job: paint,
    steps: paint.steps.map((step) => (step.verb === "wipe" ? { ...step, night: true } : step)),
    law: 10,
  },
];

function broken({ world }: MadeJob, steps: readonly Step[]): number[] {
  return prove(world, steps).laws.flatMap(({ law, held }) => (held ? [] : [law]));
}

describe("what the model of the laws showed the prover", () => {
  it.each(spots)("is refused: $name", ({ job, steps, law }) => {
    expect(broken(job, job.steps)).toEqual([]);
    expect(broken(job, steps)).toContain(law);
    expect(violated(job.world, steps)).toContain(law);
  });

  it("is allowed: a surface that is only looked at asks for no release", () => {
    const steps = after(belt, "lift-out", { verb: "inspect", object: "floor" });
    expect(broken(belt, steps)).toEqual([]);
  });

  it("is allowed: the test piece is watched after its release, and all is looked at again", () => {
    const late = weld.steps.findIndex(({ verb }) => verb === "weld");
    const again = after(
      weld,
      "peel",
      { verb: "watch", object: "test-piece", minutes: 60 },
      { verb: "look-at", object: "behind" },
    );
    const peeled = again.findIndex(({ verb }) => verb === "peel");
    const added = again.slice(peeled + 1, peeled + 3);
    expect(added.map(({ verb }) => verb)).toEqual(["watch", "look-at"]);
    expect(broken(weld, weld.steps.toSpliced(late, 0, ...added))).toEqual([]);
  });
});
