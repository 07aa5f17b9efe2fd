import { describe, expect, it } from "vitest";
import { filled, labels, repairs, seen } from "./filled.js";

describe.each(repairs)("the handover note of $name", ({ opened, plan }) => {
  const html = filled("handover", opened, plan);
  const text = seen(html);

  it("asks for all that the next person must know", () => {
    for (const asked of ["Half done", "Parts off", "Tools", "Defects found", "Nobody may"])
      expect(text).toContain(asked);
    for (const blank of [
      "last step done",
      "phone of the person who leaves",
      "both at the car from",
    ])
      expect(labels(html)).toContain(blank);
  });

  it("names every pause point with its step", () => {
    const stops = plan.steps.filter(({ checks }) => checks.length > 0);
    expect(stops.length).toBeGreaterThan(1);
    for (const [i, { n, night }] of stops.entries())
      expect(text).toContain(`${String.fromCharCode(65 + i)} ${n} ${night ? "yes" : "no"}`);
  });

  it("gives a box to each critical hold, by its number on the checklist, and to no other", () => {
    const holds = plan.steps.filter((step) => step.hold);
    const critical = holds.flatMap((step, i) => (step.critical ? [`hold ${i + 1} is open`] : []));
    const boxes = labels(html).filter((label) => label.startsWith("hold "));
    expect(critical.length).toBeGreaterThan(3);
    expect(boxes.toSorted()).toEqual(critical.toSorted());
  });

  it("names each supply that is out and the step that brings it back", () => {
    const of = (verb: string) => plan.steps.find((step) => step.verb === verb)?.n;
    expect(text).toContain(`${of("isolate")} to ${of("restore")}`);
    expect(text).toContain(`${of("drain")} to ${of("fill")}`);
    expect(text).toContain(`${of("raise")} to ${of("lower")}`);
    expect(text).toContain("Welded joint open");
  });
});
