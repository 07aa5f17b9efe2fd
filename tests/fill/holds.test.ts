import { describe, expect, it } from "vitest";
import { filled, labels, repairs, seen } from "./filled.js";

describe.each(repairs)("the holds on the checklist of $name", ({ opened, plan }) => {
  const html = filled("checklist", opened, plan);
  const blocks = html.split('<div class="hold"').slice(1);
  const held = plan.steps.flatMap((step) => (step.hold ? [{ ...step, hold: step.hold }] : []));
  const barring = held.filter(({ hold }) => hold.kind !== "witness");

  it("each say what happens if they are not released, with room to write why and whom you told", () => {
    expect(barring.length).toBeGreaterThan(10);
    expect(blocks).toHaveLength(held.length);
    for (const [i, { hold, n }] of held.entries()) {
      if (hold.kind === "witness") continue;
      const block = (blocks[i] ?? "").split('class="guarded')[0] ?? "";
      const next = plan.steps[plan.steps.findIndex((step) => step.n === n) + 1]?.n;
      const text = seen(block);
      expect(text).toContain(
        `stop, make the car safe, bar step ${next}. Tell the lead technician.`,
      );
      expect(text).toContain(
        hold.kind === "decision"
          ? "No choice, or one that stops the work:"
          : `Call the ${hold.role} again after it is put right.`,
      );
      expect(labels(block)).toEqual(
        expect.arrayContaining(["why it is not released", "told, date and time"]),
      );
    }
  });

  it("are explained in the key as never skipped", () => {
    expect(seen(html)).toContain("A hold is never skipped");
    expect(seen(html)).toContain(
      "Write “barred” beside it and say so to all at the car. Nobody goes on.",
    );
  });
});
