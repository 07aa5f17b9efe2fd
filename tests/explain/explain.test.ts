import { describe, expect, it } from "vitest";
import { countback } from "../countback.js";
import { proven } from "../plans.js";

const car = ["--car", "recipes/cars/quillet-0482.yaml", "--quiet"];

describe("plan --why", () => {
  it("follows the needs by the shortest way up to the job, and names what undoes the step", () => {
    const { code, stdout } = countback(["plan", "seat-crossmember", ...car, "--why", "carpet"]);
    const lines = stdout.split("\n");
    expect(code).toBe(0);
    expect(lines[0]).toMatch(
      /^Step \d+ \(carpet\.strip\.lift-out-carpet\): With the carpet misted/,
    );
    expect(lines[1]).toMatch(
      /^'Carpet' is in the plan because 'Replace the seat crossmember' needs it off \(.*seat-crossmember\.yaml:\d+:\d+\)\.$/,
    );
    expect(stdout).toContain("It is taken back at step");
    expect(stdout).toContain("law 3, Return: held");
  });

  it("names the option, the found note and the count", () => {
    const id = "sill-trim-plain.right.strip.undo-sill-trim-screw";
    const { stdout } = countback(["plan", "seat-crossmember", ...car, "--why", id]);
    expect(stdout).toContain("'Plain sill trim' is for cars with trim=plain.");
    expect(stdout).toContain("Found on this car: Only one of the four screws");
    expect(stdout).toContain("Count: 1 off + 3 added = 1 back + 3 renewed + 0 left out.");
  });

  it("offers the nearest name for one that is not there", () => {
    const { code, stderr } = countback(["plan", "carpet", "--quiet", "--why", "carpt"]);
    expect(code).toBe(1);
    expect(stderr).toContain("Did you mean 'carpet'?");
  });
});

interface Differs {
  here: { id: string; task: string }[];
  there: { id: string; task: string }[];
  changed: { here: { id: string } }[];
  moved: number;
}

describe("plan --against", () => {
  const differs = (...args: string[]): Differs =>
    JSON.parse(countback(["plan", "carpet", "--quiet", "--json", ...args]).stdout) as Differs;

  it("shows the steps that only one set of options has", () => {
    const { here, there } = differs("--against", "radio=other");
    const [ours, theirs] = [
      proven({ job: "carpet", fitted: { radio: "factory" } }, "recipes"),
      proven({ job: "carpet", fitted: { radio: "other" } }, "recipes"),
    ];
    const ids = (steps: { id: string }[]): Set<string> => new Set(steps.map((step) => step.id));
    const [a, b] = [ids(ours.steps), ids(theirs.steps)];
    expect(ids(here)).toEqual(new Set([...a].filter((id) => !b.has(id))));
    expect(ids(there)).toEqual(new Set([...b].filter((id) => !a.has(id))));
    expect(here.some((step) => step.task === "radio-factory")).toBe(true);
    expect(there.some((step) => step.task === "radio-other")).toBe(true);
  });

  it("says in words that nothing differs between a plan and itself", () => {
    const { stdout } = countback(["plan", "carpet", "--quiet", "--against", "radio=factory"]);
    expect(stdout).toBe("Nothing differs between this plan and radio=factory.\n");
  });

  it("shows what a found note changes", () => {
    const { changed } = differs(
      "--fitted",
      "drive=left",
      "--against",
      "recipes/cars/quillet-0482.yaml",
    );
    expect(changed.map(({ here }) => here.id)).toContain("carpet.strip.pull-out-carpet-stud");
  });
});
