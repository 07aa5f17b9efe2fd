import { describe, expect, it } from "vitest";
import { readingsOf } from "../../src/fill/readings.js";
import { torquesOf } from "../../src/fill/torques.js";
import { verbs } from "../../src/model/verbs.js";
import { gauges } from "../recipes/gauges.js";
import { filled, labels, repairs, seen } from "./filled.js";

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

/** A heading as the sheet prints it, in a cell of its own or bold before what the step says. */
function headed(heading: string): RegExp {
  return new RegExp(`<small>(?:<b>)?${escaped(heading)}(?:[ .<])`);
}

describe.each(repairs)("the measurement sheet of $name", ({ opened, plan }) => {
  const html = filled("measurements", opened, plan);
  const text = seen(html);
  const { once, again } = readingsOf(plan.steps, opened.words);
  const named = plan.steps.flatMap((step) =>
    (step.hold ?? step).readings.map(({ name }) => ({ n: step.n, name })),
  );

  it("holds every reading of the plan, once or in a series", () => {
    const sheet = [
      ...once.flatMap(({ step, readings }) => readings.map(({ name }) => `${step.n} ${name}`)),
      ...again.flatMap(({ steps, readings }) =>
        steps.flatMap(({ n }) => readings.map(({ name }) => `${n} ${name}`)),
      ),
    ];
    const bare = named.map(({ n, name }) => `${n} ${name.replace(/ \([^()]+\)$/, "")}`);
    expect(bare.length).toBeGreaterThan(30);
    expect(sheet.toSorted()).toEqual(bare.toSorted());
    for (const { name } of named) expect(text).toContain(name.replace(/ \([^()]+\)$/, ""));
  });

  it("puts the door gaps side by side, with a column for each time and for how far they differ", () => {
    const gaps = again.find(({ steps }) => steps.some(({ verb }) => verb === "compare"));
    const steps = (gaps?.steps ?? []).map(({ n }) => `Step ${n}`);
    expect(steps.length).toBeGreaterThan(2);
    expect(text).toContain(`What ${steps.join(" ")} Most from the first: by, step`);
  });

  it("names the unit of each reading in its heading, and in no column of its own", () => {
    const units = plan.steps.flatMap((step) =>
      (step.hold ?? step).readings.flatMap(({ name, figure }) => {
        const bare = name.replace(/ \([^()]+\)$/, "");
        const unit = figure?.unit ?? / \(([^()]+)\)$/.exec(name)?.[1] ?? "1";
        return unit === "1" ? [] : [`${bare} (${unit})`];
      }),
    );
    expect(units.length).toBeGreaterThan(20);
    for (const heading of units) expect(html).toMatch(headed(heading));
    expect(html).not.toContain(">Unit</th>");
  });

  it("turns a series of more than five rounds, with the number of each step beside its reading", () => {
    const columns = [...html.matchAll(/<thead>.*?<\/thead>/g)].map(
      ([head]) => head.split(">Step ").length - 1,
    );
    expect(Math.max(...columns)).toBeLessThanOrEqual(5);
    const long = again.filter(({ steps }) => steps.length > 5);
    expect(long.length).toBeGreaterThan(0);
    for (const { steps, readings } of long)
      for (const { n } of steps)
        for (const { heading } of readings)
          expect(html).toMatch(new RegExp(`<td>${n}</td><td><small><b>${escaped(heading)}\\.`));
  });

  it("prints what a hold allows, each limit with its source, wherever a figure limits a reading", () => {
    const limited = plan.steps.filter(
      ({ hold, figures }) =>
        hold &&
        hold.readings.length > 0 &&
        figures.some(({ text: limit }) => hold.accept.includes(limit)),
    );
    expect(limited.length).toBeGreaterThan(2);
    for (const { n, hold, figures } of limited) {
      const [, row = ""] = new RegExp(`data-about="step ${n}">(.*?)</tr>`).exec(html) ?? [];
      expect(seen(row)).toContain(`Allowed: ${hold?.accept.replaceAll(/_{3,}/g, "…")}`);
      for (const { text: limit, mark } of figures.filter((one) => hold?.accept.includes(one.text)))
        expect(row).toContain(`${limit.replaceAll(/_{3,}/g, "…")}<sup>(${mark})</sup>`);
    }
    const judged = [...html.matchAll(/Allowed \(hold \d+, step ([\d.]+)\):<\/b> ([^\n]*?)<\/p>/g)];
    expect(judged.length).toBeGreaterThan(1);
    for (const [, n, allowed = ""] of judged) {
      const step = plan.steps.find((one) => one.n === n);
      expect(seen(allowed).trim()).toBe(step?.hold?.accept.replaceAll(/_{3,}/g, "…"));
    }
  });

  it("never pairs readings of two objects, but holds all counts of the tools together", () => {
    expect(again.length).toBeGreaterThan(0);
    const tallies = plan.steps.filter(({ readings }) =>
      readings.some(({ name }) => name === "tools in all"),
    );
    expect(tallies.length).toBeGreaterThan(5);
    expect(again.map(({ steps }) => steps)).toContainEqual(tallies);
    for (const { steps } of again.filter((one) => one.steps[0]?.verb !== "tally")) {
      const objects = steps.map(({ does }) => does.map((d) => d.object + d.place).join());
      expect(new Set(objects).size).toBe(1);
    }
  });

  it("prints the maker's torque as a line to write on, with its mark", () => {
    const torques = torquesOf(plan.steps, opened.words);
    expect(torques.length).toBeGreaterThan(5);
    const blank = /^<span class="blank [^>]+><\/span> N·m<sup>\(M\)<\/sup>$/;
    const computed = torques.filter(({ torqueHtml }) => !blank.test(torqueHtml));
    // The bolts of the heat shield hold nothing critical: their torque is computed (K · D · F for M6 class 8.8).
    // Bolt charts give about 10 N·m for it, dry (from memory).
    expect(computed).toHaveLength(1);
    const [, least] =
      /^([\d.]+)(?: to [\d.]+)? N·m<sup>\(C\)<\/sup>$/.exec(computed[0]?.torqueHtml ?? "") ?? [];
    expect(Number(least)).toBeGreaterThan(8);
    expect(Number(least)).toBeLessThan(12);
    expect(labels(html).filter((label) => label.endsWith("marked with paint"))).toHaveLength(
      torques.length,
    );
  });

  it("leaves out no fixing that is tightened to a torque", () => {
    const listed = torquesOf(plan.steps, opened.words).map(({ n }) => n);
    const asked = plan.steps.filter(
      ({ verb, fixings }) =>
        verbs[verb]?.effect === "in" && fixings.some(({ torque }) => torque !== undefined),
    );
    expect(asked.length).toBeGreaterThan(3);
    expect(listed).toEqual(expect.arrayContaining(asked.map(({ n }) => n)));
  });

  it("asks each calibrated gauge of the plan for its number and dates, and no other tool", () => {
    const [, table = ""] = /<table data-about="gauges">.*?<tbody>(.*?)<\/tbody>/s.exec(html) ?? [];
    const rows = [...table.matchAll(/<tr class="line"><td>([^<]+)<\/td>(.*?)<\/tr>/gs)];
    const names = plan.brief.tools.map(({ name }) => name).filter((name) => gauges.includes(name));
    expect(names.length).toBeGreaterThan(9);
    expect(rows.map(([, name]) => name)).toEqual(names);
    for (const [, name, cells = ""] of rows)
      expect(cells.match(/class="pen"/g), name).toHaveLength(3);
  });
});
