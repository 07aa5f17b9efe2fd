import { describe, expect, it } from "vitest";
import { filled, labels, repairs, seen } from "./filled.js";

/** The line of the gather list with the box of that name, as HTML and as it is read. */
function itemOf(html: string, name: string): string {
  const lines = html.split("<li>").slice(1);
  return (
    lines.find((line) => line.includes(`class="box" aria-label="${name}"`))?.split("</li>")[0] ?? ""
  );
}

function lineOf(html: string, name: string): string {
  return seen(itemOf(html, name)).trim();
}

/** The title under which each kind of tool lies, in the order of the list. */
const titles = {
  fasten: "Tools to take off and put on",
  measure: "To measure, mark, test and look",
  cut: "To drill, cut, shape and clean",
  weld: "To weld",
  coat: "To prime, paint and seal",
  safe: "To make ready and safe",
};

/** What the trade says some tools of every repair are for, whatever the catalog says. */
const knownKinds = {
  "socket 17 mm": "fasten",
  "torque wrench in calibration": "fasten",
  "trim fork": "fasten",
  "milliohm meter": "measure",
  "inspection mirror": "measure",
  scriber: "measure",
  "pilot drill": "cut",
  "sheet-metal snips": "cut",
  "wire brush": "cut",
  "welding screen": "weld",
  "set of weld clamps": "weld",
  "spray gun": "coat",
  "wax lance": "coat",
  "four wheel chocks": "safe",
  "fire blanket": "safe",
  "split brake-pipe sleeve of steel": "safe",
} as const;

/** The groups of tools on a gather list: title and lines. */
function toolGroups(html: string): { title: string; items: string }[] {
  const groups = html.slice(0, html.indexOf("<h3>To wear")).split("<h3>").slice(1);
  return groups.map((items) => ({ title: items.slice(0, items.indexOf("<")), items }));
}

/** Under which titles a tool of that name lies. */
function titlesOf(html: string, name: string): string[] {
  return toolGroups(html)
    .filter(({ items }) => items.includes(`class="box" aria-label="${name}"`))
    .map(({ title }) => title);
}

describe.each(repairs)("the gather list of $name", ({ opened, plan }) => {
  it("holds every tool, supply and spare of the plan, each with a box", () => {
    const text = seen(filled("gather", opened, plan));
    const { tools, consumables, spares } = plan.brief;
    for (const { name } of [...tools, ...consumables, ...spares]) expect(text).toContain(name);
    const asked = new Set(plan.steps.flatMap((step) => step.tools));
    expect([...asked].filter((id) => !tools.some((tool) => tool.id === id))).toEqual([]);
  });

  it("names each kind of fastener that a socket or driver turns, with its size", () => {
    const html = filled("gather", opened, plan);
    for (const { id, name } of plan.brief.tools.filter((tool) =>
      /^(socket|screwdriver)/.test(tool.id),
    )) {
      const fixings = plan.steps
        .filter(({ tools }) => tools.includes(id))
        .flatMap((step) => step.fixings)
        .filter(({ size }) => size !== "");
      for (const { name: kind, size } of fixings)
        expect(lineOf(html, name), id).toMatch(new RegExp(`: .*${kind} ${size}`));
    }
  });

  it("gives drills their diameter and gauges what they must read, in both units", () => {
    const html = filled("gather", opened, plan);
    const [mm = ""] =
      /^[\d.]+ mm$/.exec(plan.steps.find(({ verb }) => verb === "pilot")?.figures[0]?.text ?? "") ??
      [];
    expect(lineOf(html, "pilot drill")).toMatch(new RegExp(`: ${mm} \\([\\d.]+ in\\)`));
    expect(lineOf(html, "contact thermometer")).toMatch(/: \d+ °C \(\d+ °F\)/);
    expect(lineOf(html, "feeler blade")).toMatch(/: [\d.]+ mm \([\d.]+ in\)/);
    expect(lineOf(html, "spot-weld cutter in a drill")).toMatch(
      /: 8 mm \(0\.315 in\) \(step [\d.]+\)$/,
    );
    expect(lineOf(html, "set of panel screws with washers wider than a plug hole")).toContain(
      ": 3.9 mm (0.154 in) (step",
    );
    const bare = ["scriber", "camera", "set of weld clamps", "depth stop for the pilot drill"];
    for (const name of bare) expect(lineOf(html, name), name).not.toContain(":");
  });

  it("says which torque a wrench must reach, with room for the maker's", () => {
    const html = filled("gather", opened, plan);
    expect(lineOf(html, "torque wrench in calibration")).toMatch(
      /: .*belt bolt 7\/16 UNF.*lock nut M10.* to .*N·m/,
    );
    expect(lineOf(html, "small torque wrench in calibration")).toMatch(/: [\d.]+ N·m,/);
    for (const name of ["torque wrench in calibration", "small torque wrench in calibration"])
      expect(labels(itemOf(html, name))).toEqual([
        name,
        "least torque of the maker",
        "highest torque of the maker",
      ]);
    expect(lineOf(html, "open insert for the torque wrench")).not.toContain("N·m");
  });

  it("leaves no supply without its amount or room to write it, and says from which step", () => {
    const html = filled("gather", opened, plan);
    for (const { id, name, amount } of plan.brief.consumables) {
      const users = plan.steps.filter(({ uses }) =>
        uses.some(({ consumable }) => consumable === id),
      );
      const [first] = users;
      const known = users.every(({ uses }) =>
        uses.every((use) => use.consumable !== id || use.amount !== undefined),
      );
      expect(lineOf(html, name)).toMatch(new RegExp(`\\(step\\s${first?.n}\\)`));
      expect(labels(itemOf(html, name))).toEqual(
        amount !== undefined && known ? [name] : [name, `how much of ${name}`],
      );
    }
  });

  it("sorts the tools by kind of work, those needed first at the top", () => {
    const html = filled("gather", opened, plan);
    const groups = toolGroups(html);
    expect(groups.map(({ title }) => title)).toEqual(Object.values(titles));
    for (const { items } of groups) {
      const from = [...items.matchAll(/\(step\s([\d.]+)\)/g)].map(([, n]) => Number(n));
      expect(from.length).toBeGreaterThan(0);
      expect(from).toEqual(from.toSorted((a, b) => a - b));
    }
    for (const { name, kind } of plan.brief.tools)
      expect(titlesOf(html, name), name).toEqual([titles[kind]]);
    const found = Object.fromEntries(
      Object.keys(knownKinds).map((name) => [name, titlesOf(html, name)[0]]),
    );
    expect(found).toEqual(
      Object.fromEntries(Object.entries(knownKinds).map(([name, kind]) => [name, titles[kind]])),
    );
  });

  it("lays a tool under another title where its kind is another", () => {
    const moved = plan.brief.tools.map((tool) =>
      tool.name === "four wheel chocks" ? { ...tool, kind: "weld" as const } : tool,
    );
    const html = filled("gather", opened, { ...plan, brief: { ...plan.brief, tools: moved } });
    expect(titlesOf(html, "four wheel chocks")).toEqual(["To weld"]);
  });

  it("asks for two tags for each plug and hook that is parted", () => {
    const parted = plan.steps
      .filter(({ phase, verb }) => phase === "strip" && ["unplug", "unhook"].includes(verb))
      .reduce((sum, { does }) => sum + does.length, 0);
    expect(parted).toBeGreaterThan(5);
    expect(seen(filled("gather", opened, plan))).toContain(
      `${2 * parted} tags for what is unplugged and unhooked: numbers 1 to ${parted}, two of each`,
    );
  });
});
