import { describe, expect, it } from "vitest";
import type { CarFile } from "../../src/model/generated/car.js";
import { planned } from "../plans.js";

type Found = NonNullable<CarFile["found"]>;

/** The carpet job of the Quillet on a car on which this was found. */
function carpet(found: Found) {
  const car: CarFile = { car: "odd", range: "ostrey-quillet", fitted: {}, found };
  const { value, diagnostics } = planned({ job: "carpet", car }, "recipes");
  const count = (kind: string, place: string) => {
    const line = value?.count.find((one) => one.kind === kind && one.place === place);
    return [line?.off, line?.added, line?.back, line?.renewed, line?.leftOut];
  };
  const says = value?.steps.map((step) => step.says) ?? [];
  return { value, diagnostics, count, says };
}

describe("what was found on the car", () => {
  it("counts fixings that are too many, and leaves them out by name", () => {
    const note = "Two more press studs were added at the heelboard.";
    const { diagnostics, count, says, value } = carpet([{ fixing: "carpet-stud", extra: 2, note }]);
    expect(diagnostics).toEqual([]);
    expect(count("carpet-stud", "")).toEqual([8, 0, 6, 0, 2]);
    expect(says).toContain("Pull out the 8 press studs along the bulkhead and the heelboard.");
    const left = value?.steps.find((step) => step.verb === "leave-out");
    expect(left?.does[0]?.reason).toBe(note);
  });

  it("renews those that are spoiled", () => {
    const note = "One screw of the boot is spoiled.";
    const { diagnostics, count } = carpet([{ fixing: "shift-boot-screw", damaged: 1, note }]);
    expect(diagnostics).toEqual([]);
    expect(count("shift-boot-screw", "")).toEqual([4, 0, 3, 1, 0]);
  });

  it("drills out rivets where screws should be, and does up new screws", () => {
    const note = "The right sill trim is riveted.";
    const found: Found = [{ fixing: "sill-trim-screw", at: "right", as: "rivet-blind", note }];
    const { diagnostics, count, says, value } = carpet(found);
    expect(diagnostics).toEqual([]);
    expect(count("sill-trim-screw", "right")).toEqual([4, 0, 0, 4, 0]);
    expect(says).toContain("Drill out the 4 blind rivets 4.0 mm along the sill.");
    const tools = value?.steps.find((step) => step.verb === "drill-out")?.tools;
    expect(tools).toEqual(["rivet-gun"]);
  });

  it("prints a note on the side that it is about, and on no other", () => {
    const note = "Only one of the four screws of the right sill trim is there.";
    const { value } = carpet([{ fixing: "sill-trim-screw", at: "right", present: 1, note }]);
    const noted = value?.steps.filter((step) => step.found.includes(note)) ?? [];
    expect(noted.length).toBeGreaterThan(0);
    expect(new Set(noted.map((step) => step.position))).toEqual(new Set(["right"]));
  });

  it("needs no strip of a part that is gone, and leaves it off for a reason", () => {
    const note = "The left seat stays with its owner.";
    const found: Found = [
      { part: "front-seat", at: "left", absent: true, refit: "leave-off", note },
    ];
    const { diagnostics, value } = carpet(found);
    expect(diagnostics).toEqual([]);
    const seats = value?.steps.filter((step) => step.part === "front-seat") ?? [];
    expect(new Set(seats.map((step) => step.position))).toEqual(new Set(["right"]));
  });
});

describe("the tools of a fixing", () => {
  const { value } = planned({ job: "carpet", fitted: { trim: "plated" } }, "recipes");
  const tools = (verb: string, kind: string) =>
    value?.steps.find((step) => step.does.some((one) => one.verb === verb && one.object === kind))
      ?.tools;

  it("are those of its way, where the way back has its own", () => {
    expect(tools("unclip", "sill-trim-clip")).toEqual(["trim-fork"]);
    expect(tools("clip-in", "sill-trim-clip")).toEqual(["mallet"]);
  });

  it("are none where it goes in by hand", () => {
    expect(tools("pull-out", "carpet-stud")).toEqual(["trim-fork", "mist-bottle"]);
    expect(tools("press-in", "carpet-stud")).toEqual([]);
  });

  it("are the same on both ways where nothing else is said", () => {
    expect(tools("undo", "knee-panel-screw")).toEqual(["screwdriver-cross"]);
    expect(tools("do-up", "knee-panel-screw")).toEqual(["screwdriver-cross"]);
  });
});
