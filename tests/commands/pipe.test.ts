import { expect, it } from "vitest";
import { run } from "../pdf.js";

it("says nothing when a reader closes the pipe early", () => {
  const plan = "node dist/cli.js plan seat-crossmember --car recipes/cars/quillet-0482.yaml --json";
  expect(run("bash", ["-c", `{ ${plan} | head -1 >/dev/null; } 2>&1`])).toBe("");
});
