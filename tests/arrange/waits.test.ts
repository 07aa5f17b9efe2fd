import { cpSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { planned, small } from "../plans.js";

/** The carpet job with a way back of the seat that is written out, the rear nuts under a condition. */
function refit(needs: string) {
  const folder = mkdtempSync(join(tmpdir(), "countback-waits-"));
  cpSync(small, folder, { recursive: true });
  const seat = [
    "recipe: seat",
    "name: Seat",
    "strips: seat",
    "when: { seats: manual }",
    "strip:",
    "  - undo: [front-nut, rear-nut]",
    "  - lift-out: seat",
    "refit:",
    "  - put-in: seat",
    "  - do-up: front-nut",
    "  - do-up: rear-nut",
    ...(needs === "" ? [] : [`    needs: [${needs}]`]),
    "",
  ];
  writeFileSync(join(folder, "tiny/strip/seat.yaml"), seat.join("\n"));
  const { value, diagnostics } = planned({ job: "carpet" }, folder);
  expect(diagnostics.map((d) => d.message)).toEqual([]);
  const at = (verb: string, object: string): number =>
    (value?.steps ?? []).findIndex(({ does }) =>
      does.some((one) => one.verb === verb && one.object === object && one.place === "left"),
    );
  return { nuts: at("do-up", "rear-nut"), trim: at("put-in", "trim"), seat: at("put-in", "seat") };
}

it("ties a seat down only when a neighbour is back, if its recipe says so", () => {
  const { nuts, trim, seat } = refit("trim on");
  expect(nuts).toBeGreaterThan(trim);
  expect(nuts).toBeGreaterThan(seat);
});

it("ties it down while the neighbour is still off, where that is easier", () => {
  const { nuts, trim, seat } = refit("trim off");
  expect(nuts).toBeLessThan(trim);
  expect(nuts).toBeGreaterThan(seat);
});

it("follows the recipe's own list where nothing is said", () => {
  const { nuts, seat } = refit("");
  expect(nuts).toBe(seat + 2);
});
