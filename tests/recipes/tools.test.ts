import { describe, expect, it } from "vitest";
import { toolKinds } from "../../src/fill/tool-lines.js";
import { jobsOf, opened, own, planned } from "../plans.js";
import { gauges } from "./gauges.js";

const { library } = opened(own);
const { tools } = library.catalog;
const steps = jobsOf(opened(own))
  .filter(({ name }) => /^(seat-crossmember|floor-pan-section) on quillet-0482/.test(name))
  .flatMap(({ ask }) => planned(ask, own).value?.steps ?? []);

/** The kind of the tool that a step of that verb asks for first. */
const kindsOfWork = {
  fasten: ["undo", "do-up", "press-in", "unbrace"],
  measure: ["measure", "compare", "photograph"],
  cut: ["scrape", "centre", "pilot", "drill", "separate", "deburr", "straighten"],
  weld: ["clamp", "tack", "weld", "close"],
  coat: ["prime", "paint", "seal", "coat", "wax"],
  safe: ["raise", "lower", "brace", "shield", "drain"],
};

describe("the tools of the library", () => {
  it("are gauges where a shop has them calibrated, and nowhere else", () => {
    const reading = Object.values(tools).filter(({ reads }) => reads !== undefined);
    expect(reading.map(({ name }) => name).sort()).toEqual(gauges);
  });

  it("measure where they read anything but torque", () => {
    for (const { name, kind, reads } of Object.values(tools))
      if (reads !== undefined) expect(kind, name).toBe(reads === "torque" ? "fasten" : "measure");
  });

  it("fasten where a kind of fastener names them", () => {
    const named = library.ranges.flatMap(({ data }) =>
      Object.values(data.kinds).flatMap((kind) => [kind.tool ?? [], kind["tool-in"] ?? []].flat()),
    );
    const ids = [...new Set(named)];
    expect(ids.length).toBeGreaterThan(8);
    for (const id of ids) expect(tools[id]?.kind, id).toBe("fasten");
  });

  it.each(Object.entries(kindsOfWork))("are of kind %s where their steps are", (kind, verbs) => {
    for (const verb of verbs) {
      const asked = steps.filter((step) => step.verb === verb && step.tools.length > 0);
      expect(asked.length, verb).toBeGreaterThan(0);
      for (const {
        n,
        tools: [first = ""],
      } of asked)
        expect(tools[first]?.kind, `${verb} ${n} ${first}`).toBe(kind);
    }
  });

  it("hold every kind that the gather list has a title for, and no other", () => {
    expect(new Set(Object.values(tools).map(({ kind }) => kind))).toEqual(new Set(toolKinds));
  });
});
