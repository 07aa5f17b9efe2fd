import { describe, expect, it } from "vitest";
import { countback } from "../countback.js";

interface PlanJson {
  steps: { verb: string; wait: string; does: { minutes?: number }[] }[];
  brief: { consumables: { id: string; amount?: number }[] };
}

const planned = (...args: string[]): PlanJson =>
  JSON.parse(
    countback(["plan", "seat-crossmember", "--json", "--quiet", ...args]).stdout,
  ) as PlanJson;

describe("figures that a job asks for", () => {
  // NFPA 51B (2019) 60 min; 29 CFR 1910.252(a)(2)(iii) half an hour; 60 min where no code is chosen.
  it.each([
    [[], 60],
    [["--code", "nfpa-51b-2019"], 60],
    [["--code", "osha"], 30],
  ])("the fire is watched as the code says, %j", (args, minutes) => {
    const watches = planned(...args).steps.filter((step) => step.verb === "watch");
    expect(watches.length).toBeGreaterThan(0);
    for (const { wait, does } of watches) {
      expect(wait).toBe(`${minutes} min`);
      expect(does[0]?.minutes).toBe(minutes);
    }
  });

  it("a code that is not there is refused, with those that are", () => {
    const { code, stderr } = countback(["plan", "carpet", "--code", "osh"]);
    expect(code).toBe(2);
    expect(stderr).toContain("osha");
  });

  // Worked by hand: 66 plugs and the 6 test pieces of one welder, 8 mm through 1.2 mm, half as much again for the crown, nine
  // tenths of the wire laid: 72 · π/4 · 8² · 1.2 · 1.5 / 0.9 = 7238 mm³; at 7.85 g/cm³ (steel) 56.8 g.
  it("the wire on the gather list is worked out from the welds", () => {
    const wire = planned().brief.consumables.find(({ id }) => id === "wire");
    expect(wire?.amount).toBeGreaterThan(56);
    expect(wire?.amount).toBeLessThan(57);
  });
});
