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

  it("names each supply that is out and the step that brings it back", () => {
    const of = (verb: string) => plan.steps.find((step) => step.verb === verb)?.n;
    expect(text).toContain(`${of("isolate")} to ${of("restore")}`);
    expect(text).toContain(`${of("drain")} to ${of("fill")}`);
    const down = plan.steps.findLast((step) => step.verb === "lower")?.n;
    expect(text).toContain(`${of("raise")} to ${down}`);
    expect(text).toContain("Welded joint open");
  });

  it("has a line of its own for each thing that is shielded, set out or parted, and the step that ends it", () => {
    const pairs = { shield: "unshield", "set-out": "clear-away", unplug: "plug-in" };
    for (const [verb, end] of Object.entries(pairs)) {
      const begun = plan.steps.filter((step) => step.verb === verb);
      expect(begun.length).toBeGreaterThan(1);
      for (const { n, says, does } of begun) {
        const [change] = does;
        const after = plan.steps.slice(plan.steps.findIndex((step) => step.n === n));
        const ends = after.find(
          (step) =>
            step.verb === end &&
            step.does.some((d) => d.object === change?.object && d.place === change.place),
        );
        expect(text).toContain(`${says.replaceAll(/_{3,}/g, "…")} ${n} to ${ends?.n}`);
      }
    }
  });
});

describe.each(repairs)("the sheet that keeps $name off the road", ({ opened, plan }) => {
  const html = filled("road", opened, plan);
  const text = seen(html);

  it("gives a line to every hold, by who releases it, and to those who permit", () => {
    const holds = plan.steps.filter((step) => step.hold);
    const rows = [...html.matchAll(/data-about="hold (\d+)"/g)].map(([, number]) => Number(number));
    expect(rows.toSorted((a, b) => a - b)).toEqual(holds.map((_, i) => i + 1));
    for (const role of new Set(holds.map(({ hold }) => hold?.role)))
      expect(text).toContain(`By the ${role}`);
    expect(plan.brief.permits.length).toBeGreaterThan(1);
    for (const { who } of plan.brief.permits)
      expect(text).toMatch(new RegExp(`By others .*${who}`));
  });

  it("tells the left from the right", () => {
    const sided = plan.steps.filter(({ hold, position }) => hold && position !== "");
    expect(sided.length).toBeGreaterThan(4);
    for (const { n, title, position } of sided)
      expect(text).toContain(` ${n} ${title}, ${position}.`);
  });

  it("lies with the key until the lead technician has signed it", () => {
    expect(text).toContain("this sheet lies with the key");
    expect(labels(html)).toContain("signature of the lead technician");
    const set = plan.steps.find(({ verb, says }) => verb === "set-out" && says.includes("road"));
    expect(set?.says).toContain("with the key");
  });
});
