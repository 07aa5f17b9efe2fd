import { describe, expect, it } from "vitest";
import { parse } from "../../src/read/parse.js";
import { type PlanFile, planFrom } from "../../src/index.js";
import { judged, planned } from "../plans.js";

type Steps = PlanFile["steps"];

const { opened, value } = planned({ job: "floor-paint" });
const steps = value?.steps ?? [];

/** What is said of the plan once its steps are edited. */
const saidOf = (edit: (steps: Steps) => Steps) =>
  judged(opened, value, edit(steps)).diagnostics.map(({ code, message }) => ({ code, message }));

describe("a plan file edited by hand", () => {
  it("proves as long as nothing is edited", () => {
    expect(steps.length).toBeGreaterThan(30);
    expect(saidOf((same) => same)).toEqual([]);
  });

  it("cannot put a clip back that is used once [one-use]", () => {
    const found = saidOf((all) =>
      all.map((step) => ({
        ...step,
        does: step.does.map((change) =>
          change.object === "trim-clip" && change.fresh === 1 ? { ...change, fresh: 0 } : change,
        ),
      })),
    );
    expect(found.map((d) => d.code)).toEqual(["one-use", "one-use"]);
    expect(found[0]?.message).toContain("'trim-clip@right' is used once: all 1 must be new, not 0");
  });

  it("cannot leave a hold out [holds]", () => {
    const found = saidOf((all) => all.filter((step) => step.hold === undefined));
    expect(found).toContainEqual({
      code: "holds",
      message: "at the end: the hold 'floor-seen' is not in the plan",
    });
  });

  it("is refused once the library has changed [stale-plan]", () => {
    const text = JSON.stringify({ ...value, digest: "00000000" });
    const source = parse("plan.json", text).value;
    const found = source ? planFrom(opened, source).diagnostics : [];
    expect(found.map((d) => d.code)).toEqual(["stale-plan"]);
    expect(found[0]?.span?.start).toBe(text.indexOf('"00000000"'));
    expect(found[0]?.hints).toEqual(["Plan the job again and make the edits anew."]);
  });
});
