import { describe, expect, it } from "vitest";
import { sheets } from "../../src/fill/sheets.js";
import { weldingOf } from "../../src/fill/welds.js";
import { proven } from "../plans.js";
import { filled, inputOf, labels, lists, repairs, seen } from "./filled.js";

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

  const stepAt = (n: string) => plan.steps.find((step) => step.n === n);

  it("has a row for each test weld of each welder in each position, and none of them among the joints", () => {
    expect(tests.length).toBeGreaterThan(0);
    const section = html.slice(html.indexOf("Test piece, before"), html.indexOf("The same for"));
    for (const { n, count, of, positions } of tests) {
      expect(positions.length).toBeGreaterThan(0);
      const [, after = ""] = section.split(`data-about="test welds of step ${n}"`);
      const [table = ""] = after.split("</table>");
      for (const welder of [1, 2])
        for (const position of positions) {
          const row = new RegExp(
            `>${welder}\\.\\d+</td><td>${position}</td>(<td class="pen"></td>){5}`,
          );
          expect(table.split("</tr>").filter((line) => row.test(line))).toHaveLength(count);
        }
      expect(of).toMatch(/welder/);
      const peeled = plan.steps.some(
        ({ verb, does }) =>
          verb === "peel" && does.some(({ object }) => object === stepAt(n)?.does[0]?.object),
      );
      const judged = peeled ? /Peeled: button \(mm\)<.*Tore where/ : /Filled through<.*Burnt thin/;
      expect(table, n).toMatch(judged);
      expect(seen(section)).toContain(`Step ${n}: ${count} ${of}`);
    }
    expect(section).toMatch(/Look: what is seen<.*Looked at by</);
    expect(new Set(section.match(/data-about="piece [\d.]+/g)).size).toBe(
      section.match(/data-about="piece/g)?.length,
    );
    expect(joints.map(({ name }) => name)).not.toContain(tests[0]?.name);
  });

  it("puts the values to begin with above what is released, in one table", () => {
    const [, table = ""] = /<table class="settings".*?>(.*?)<\/table>/s.exec(html) ?? [];
    const head = [...table.matchAll(/<th scope="col">(.*?)<\/th>/g)].map(([, name]) => name);
    expect(head.slice(1, 5)).toEqual([
      "current<br>(A)",
      "voltage<br>(V)",
      "gas flow<br>(L/min)",
      "gas mix",
    ]);
    const rows = [...table.matchAll(/<tr class="line".*?<\/tr>/gs)].map(([row]) =>
      [...row.matchAll(/<td( class="pen")?>(.*?)<\/td>/g)].map(([, pen = "", cell = ""]) =>
        pen === "" ? cell : "pen",
      ),
    );
    const starts = rows.filter(([name = ""]) => name.startsWith("To begin with"));
    const computed = new Set(
      plan.steps
        .filter(({ verb }) => verb === "weld")
        .flatMap((step) => step.facts.flatMap(({ figure }) => figure ?? []))
        .filter(({ unit }) => unit === "A" || unit === "V" || unit === "L/min")
        .map(({ value, to, unit }) => `${unit}: ${value} to ${to}<sup>(C)</sup>`),
    );
    expect(computed.size).toBeGreaterThan(4);
    const printed = starts.flatMap(([, current, voltage, flow]) => [
      `A: ${current}`,
      `V: ${voltage}`,
      `L/min: ${flow}`,
    ]);
    expect(printed.filter((one) => !one.endsWith(": ")).toSorted()).toEqual([...computed].sort());
    expect(new Set(starts.map(([name]) => name)).size).toBe(starts.length);
    const released = rows.filter(([name = ""]) => name.startsWith("Released, welder"));
    expect(released).toHaveLength(2 * new Set(tests.flatMap(({ positions }) => positions)).size);
    for (const [, ...cells] of released) expect(new Set(cells)).toEqual(new Set(["pen"]));
  });

  it("explains why two printed ranges stand beside each other, and after whom they were computed", () => {
    const [test] = plan.steps.filter(({ verb, count }) => verb === "weld" && count);
    expect(test?.note).toMatch(/peel test/);
    expect(text).toContain(
      `neither corrects the other. The wire feed to begin with is in the table of the set, for that current (common practice, no source). Step ${test?.n} says: ${test?.note}`,
    );
    expect(text).toMatch(/Computed by: table by sheet and joint.*Power source manuals/);
  });

  it("says in which order the joints are welded, in the words of their steps", () => {
    const [, order = ""] = /In this order(.*?)Holes in the new panel/.exec(text) ?? [];
    const wanted = joints.map(({ welded }) => plan.steps.find(({ n }) => n === welded?.n));
    const places = wanted.map((step) => order.indexOf(`${step?.n} ${step?.says.slice(0, 20)}`));
    expect(places).not.toContain(-1);
    expect(order).not.toContain("[object");
  });

  it("has the short messages of all tacks and welds on the page that is read aloud", () => {
    const [, page = ""] = /Read aloud before each round(.*?)In this order/.exec(text) ?? [];
    const joining = plan.steps.filter(
      ({ verb, count }) =>
        ["tack", "close"].includes(verb) || (verb === "weld" && !count?.positions.length),
    );
    expect(joining.length).toBeGreaterThan(4);
    for (const { n, hazard, avoid, short = avoid } of joining.flatMap((step) =>
      step.messages.map((message) => ({ n: step.n, ...message })),
    ))
      expect(page, n).toContain(`${hazard}. ${short}`);
  });

  it("says what is drawn on the map, and at which steps", () => {
    const map = text.slice(text.indexOf("Map of the welds"));
    const at = (verb: string) =>
      plan.steps.filter((step) => step.verb === verb && step.does.some(isJoint)).map(({ n }) => n);
    const keys = joints.map(({ key }) => key.split("@")[0]);
    const isJoint = ({ object }: { object: string }) => keys.includes(object);
    expect(map).toContain(
      "At the step that says so, and before the first weld of the panel at the latest: draw each joint as a line with its letter",
    );
    const sides = Object.values(plan.brief.outline ?? {});
    expect(sides.length).toBeGreaterThan(3);
    const drawn = map.slice(map.indexOf("Your signs"));
    for (const side of sides) expect(drawn.split(` ${side} `), side).toHaveLength(2);
    const [, welded = ""] = /At ([\d, to]+): write its number/.exec(map) ?? [];
    for (const n of at("weld")) expect(lists(welded, n), n).toBe(true);
    joints.forEach(({ name, welded: back }, i) => {
      const letter = String.fromCharCode(65 + i);
      expect(map).toContain(`${letter} ${name} (${back?.count})`);
      expect(text.slice(0, -map.length)).toContain(`${letter} ${name} `);
    });
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

  it("prints every other setting of the plan's weld steps once", () => {
    const facts = plan.steps.filter(({ verb }) => verb === "weld").flatMap((step) => step.facts);
    const others = facts.filter(
      ({ field, figure }) =>
        !field.includes("as released") && !/^(A|V|L\/min)$/.test(figure?.unit ?? ""),
    );
    expect(others.length).toBeGreaterThan(5);
    for (const { field } of others) expect(html.split(`<td>${field}</td>`), field).toHaveLength(2);
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
