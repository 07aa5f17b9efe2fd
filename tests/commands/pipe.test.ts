import { expect, it } from "vitest";
import { run } from "../pdf.js";

it("says nothing when a reader closes the pipe early", () => {
  const plan = "node dist/cli.js plan seat-crossmember --car recipes/cars/quillet-0482.yaml";
  expect(
    run("bash", ["-c", `${plan} 2>&1 | head -1`])
      .trim()
      .split("\n"),
  ).toHaveLength(1);
  expect(run("bash", ["-c", `{ ${plan} | head -1 >/dev/null; } 2>&1`])).toBe("");
});
