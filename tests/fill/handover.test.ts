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

  it("gives a line to each hold from the repair on, to each critical one, and to those who permit", () => {
    const holds = plan.steps.filter((step) => step.hold);
    const late = ["repair", "refit", "close"];
    const wanted = holds.flatMap(({ critical, phase, hold }, i) =>
      critical || (hold?.kind === "hold" && late.includes(phase)) ? [`hold ${i + 1}`] : [],
    );
    expect(plan.brief.permits.length).toBeGreaterThan(1);
    for (const { who } of plan.brief.permits)
      expect(text).toMatch(new RegExp(`By others .*${who}`));
    const rows = [...html.matchAll(/data-about="(hold \d+)"/g)].map(([, number]) => number);
    expect(wanted.length).toBeGreaterThan(3);
    expect(rows.toSorted()).toEqual(wanted.toSorted());
    expect(text).toContain("By the lead technician");
  });

  it("names each supply that is out and the step that brings it back", () => {
    const of = (verb: string) => plan.steps.find((step) => step.verb === verb)?.n;
    expect(text).toContain(`${of("isolate")} to ${of("restore")}`);
    expect(text).toContain(`${of("drain")} to ${of("fill")}`);
    const down = plan.steps.findLast((step) => step.verb === "lower")?.n;
    expect(text).toContain(`${of("raise")} to ${down}`);
    expect(text).toContain("Welded joint open");
  });
});
