import { describe, expect, it } from "vitest";
import { sheets } from "../../src/fill/sheets.js";
import { weldingOf } from "../../src/fill/welds.js";
import { proven } from "../plans.js";
import { filled, inputOf, labels, repairs, seen } from "./filled.js";

describe.each(repairs)("the weld sheet of $name", ({ opened, plan }) => {
  const html = filled("welds", opened, plan);
  const text = seen(html);
  const { joints, tests, holes } = weldingOf(plan.steps, opened.words);
  const total = (verb: string, keys: readonly string[]) =>
    plan.steps
      .filter((step) => step.verb === verb)
      .flatMap(({ does }) => does)
      .filter(({ object, place }) => keys.includes(place === "" ? object : `${object}@${place}`))
      .reduce((sum, { count = 0 }) => sum + count, 0);

  it("counts the welds of each joint out and back, to the same number", () => {
    expect(joints.length).toBeGreaterThan(0);
    for (const { marked, drilled, welded } of joints)
      expect([marked?.count, drilled?.count]).toEqual([welded?.count, welded?.count]);
    const keys = joints.map(({ key }) => key);
    const all = ["centre", "drill", "weld"].map((verb) => total(verb, keys)).join(" ");
    expect(text).toContain(`Together ${all}`);
  });

  it("has a line to write on for each count of each joint", () => {
    for (const { name } of joints)
      for (const what of ["marked", "drilled out", "welded"])
        expect(labels(html)).toContain(`${name}, ${what}`);
  });

  it("has a row for each weld of the test piece, and no test piece among the joints", () => {
    expect(tests.length).toBeGreaterThan(0);
    const welds = tests.reduce((sum, { count }) => sum + count, 0);
    const section = html.slice(html.indexOf("Test piece, before"), html.indexOf("Settings"));
    // Two welders in two positions each make the number that the step names.
    expect(section.split('<tr class="line"').length - 1).toBeGreaterThanOrEqual(4 * welds);
    for (const column of ["Welder", "Position", "Button, width in mm"])
      expect(section).toContain(`>${column}</th>`);
    for (const { count, of } of tests) {
      expect(of).toMatch(/welder/);
      expect(seen(section)).toContain(`: ${count} ${of}`);
    }
    expect(joints.map(({ name }) => name)).not.toContain(tests[0]?.name);
  });

  it("says why the printed settings are only where to begin, and has room for what was released", () => {
    const [test] = plan.steps.filter(({ verb, count }) => verb === "weld" && count);
    expect(test?.note).toMatch(/peel test/);
    expect(text).toContain(test?.note);
    const released = html.slice(html.indexOf("As set and released"));
    for (const what of ["current as released", "gas mix as released"])
      expect(released).toContain(what);
    expect(html.slice(0, html.indexOf("As set and released"))).not.toContain("as released (A)");
  });

  it("has a row for the stray holes that each step welds up", () => {
    const closing = plan.steps.filter(({ verb, readings }) => verb === "close" && readings.length);
    expect(closing.length).toBeGreaterThan(0);
    for (const { n } of closing) expect(html).toContain(`data-about="step ${n}"><td>${n}</td>`);
  });

  it("asks for as many holes in the new panel as there are welds", () => {
    const back = joints.reduce((sum, { welded }) => sum + (welded?.count ?? 0), 0);
    expect(holes.reduce((sum, { count }) => sum + count, 0)).toBe(back);
  });

  it("prints every setting of the plan's weld steps", () => {
    const facts = plan.steps.filter(({ verb }) => verb === "weld").flatMap((step) => step.facts);
    expect(facts.length).toBeGreaterThan(5);
    for (const { field } of facts) expect(text).toContain(` ${field} `);
  });

  it("names each inspector's hold between the test piece and the last look", () => {
    const inspector = plan.steps.filter(({ hold }) => hold?.role === "inspector");
    expect(inspector.length).toBeGreaterThan(2);
    for (const { n, hold } of inspector)
      expect(text).toContain(`${n} ${hold?.accept.replaceAll(/_{3,}/g, "…")}`);
  });
});

it("is for plans that weld only", () => {
  const sheet = sheets.find(({ name }) => name === "welds");
  const plan = proven({ job: "floor-paint" });
  expect(sheet?.applies(inputOf(plan))).toBe(false);
});
