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

describe.each(repairs)("the planning sheets of $name", ({ opened, plan }) => {
  it("the gather list holds every tool, supply and spare of the plan, each with a box", () => {
    const text = seen(filled("gather", opened, plan));
    const { tools, consumables, spares } = plan.brief;
    for (const { name } of [...tools, ...consumables, ...spares]) expect(text).toContain(name);
    const asked = new Set(plan.steps.flatMap((step) => step.tools));
    expect([...asked].filter((id) => !tools.some((tool) => tool.id === id))).toEqual([]);
  });

  it("the gather list names each kind of fastener that a socket or driver turns, with its size", () => {
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

  it("the gather list gives drills their diameter and gauges what they must read, in both units", () => {
    const html = filled("gather", opened, plan);
    const [mm = ""] =
      /^[\d.]+ mm$/.exec(plan.steps.find(({ verb }) => verb === "pilot")?.figures[0]?.text ?? "") ??
      [];
    expect(lineOf(html, "pilot drill")).toMatch(new RegExp(`: ${mm} \\([\\d.]+ in\\)`));
    expect(lineOf(html, "contact thermometer")).toMatch(/: \d+ °C \(\d+ °F\)/);
    expect(lineOf(html, "feeler blade")).toMatch(/: [\d.]+ mm \([\d.]+ in\)/);
    for (const name of ["scriber", "camera"]) expect(lineOf(html, name)).not.toContain(":");
  });

  it("the gather list says which torque a wrench must reach, with room for the maker's", () => {
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

  it("the gather list leaves no supply without its amount or room to write it, and says from which step", () => {
    const html = filled("gather", opened, plan);
    for (const { id, name, amount } of plan.brief.consumables) {
      const first = plan.steps.find(({ uses }) => uses.some(({ consumable }) => consumable === id));
      expect(lineOf(html, name)).toContain(`from step ${first?.n}.`);
      expect(labels(itemOf(html, name))).toEqual(
        amount === undefined ? [name, `how much of ${name}`] : [name],
      );
    }
  });

  it("the gather list sorts the tools by kind of work, those needed first at the top", () => {
    const html = filled("gather", opened, plan);
    const groups = html.slice(0, html.indexOf("<h3>To wear")).split("<h3>").slice(1);
    const titles = groups.map((group) => group.slice(0, group.indexOf("<")));
    expect(titles.slice(0, 4)).toEqual([
      "Tools to take off and put on",
      "To measure, test and look",
      "To drill, cut and clean",
      "To weld",
    ]);
    for (const group of groups) {
      const from = [...group.matchAll(/from step ([\d.]+)\./g)].map(([, n]) => Number(n));
      expect(from).toEqual(from.toSorted((a, b) => a - b));
    }
    const groupOf = (name: string): string | undefined =>
      titles[groups.findIndex((group) => group.includes(`aria-label="${name}"`))];
    expect(groupOf("socket 17 mm")).toBe("Tools to take off and put on");
    expect(groupOf("milliohm meter")).toBe("To measure, test and look");
    expect(groupOf("pilot drill")).toBe("To drill, cut and clean");
    expect(groupOf("welding screen")).toBe("To weld");
    expect(groupOf("spray gun")).toBe("To prime, paint and seal");
    expect(groupOf("wheel chocks")).toBe("To make ready and safe");
  });

  it("the gather list asks for two tags for each plug and hook that is parted", () => {
    const parted = plan.steps
      .filter(({ phase, verb }) => phase === "strip" && ["unplug", "unhook"].includes(verb))
      .reduce((sum, { does }) => sum + does.length, 0);
    expect(parted).toBeGreaterThan(5);
    expect(seen(filled("gather", opened, plan))).toContain(
      `${2 * parted} tags for what is unplugged and unhooked: two with each number`,
    );
  });

  it("the time plan asks for as many people as the checklist says at the same block", () => {
    const people = (sheet: string, pattern: RegExp): string[] =>
      [...filled(sheet, opened, plan).matchAll(pattern)].map(([, n = ""]) =>
        n === "" ? "1" : (n.split("–").at(-1) ?? ""),
      );
    const planned = people(
      "times",
      /<tr data-about="steps[^>]*>.*?<td>([\d–]+)<\/td><td class="pen">/g,
    );
    const checked = people("checklist", /<p class="meta">[^<]*?(?:1 person|(\d+) people)<\/p>/g);
    expect(planned.length).toBeGreaterThan(80);
    expect(checked).toEqual(planned);
  });

  it("the time plan covers every step once and adds up", () => {
    const html = filled("times", opened, plan);
    const rows = [
      ...html.matchAll(
        /<tr data-about="steps[^>]*><td>([\d.]+)(?:–([\d.]+))?<\/td>.*?<td>(\d+)<\/td><td>(\d+)<\/td><td>(\d+)<\/td>/g,
      ),
    ];
    const at = new Map(plan.steps.map((step, i) => [step.n, i]));
    const covered = rows.flatMap(([, from = "", to = from]) =>
      plan.steps.slice(at.get(from), (at.get(to) ?? 0) + 1).map((step) => step.n),
    );
    expect(covered).toEqual(plan.steps.map((step) => step.n));
    const minutes = rows.reduce((sum, row) => sum + Number(row[4]), 0);
    const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
    expect(/All, hours and minutes<\/td><td>[\d:]+<\/td><td>([\d:]+)/.exec(html)?.[1]).toBe(clock);
  });

  it("the time plan adds the known waits up apart from the work, per part and in all, and counts the others", () => {
    const html = filled("times", opened, plan);
    const [, table = ""] = /<table class="in-short">(.*?)<\/table>/s.exec(html) ?? [];
    const rows = [...table.matchAll(/<tr[^>]*>(<td>.*?)<\/tr>/g)].map(([, row = ""]) =>
      [...row.matchAll(/<td>(.*?)<\/td>/g)].map(([, cell = ""]) => seen(cell).trim()),
    );
    const minutesOf = (time = ""): number => {
      const [hours = 0, minutes = 0] = time.split(":").map(Number);
      return 60 * hours + minutes;
    };
    // Read from the words that the checklist prints, not from the minutes that the plan carries.
    const waitOf = ({ wait }: { wait: string }): number => {
      const [, value = "", unit = ""] = /^([\d.]+) (h|min)$/.exec(wait) ?? [];
      return Number(value) * (unit === "h" ? 60 : 1);
    };
    const known = plan.steps.filter((step) => waitOf(step) > 0);
    expect(known.length).toBeGreaterThan(4);
    const expected = (steps: typeof plan.steps): [number, number, number] => [
      steps.reduce((sum, step) => sum + waitOf(step), 0),
      steps.filter((step) => step.wait !== "" && waitOf(step) === 0).length,
      steps.filter(({ night }) => night).length,
    ];
    const printed = (row: readonly string[]) => [minutesOf(row[4]), Number(row[5]), Number(row[6])];
    const parts = [...new Set(plan.steps.map(({ phase }) => phase))];
    expect(rows).toHaveLength(parts.length + 1);
    parts.forEach((part, i) => {
      const steps = plan.steps.filter(({ phase }) => phase === part);
      expect(printed(rows[i] ?? []), part).toEqual(expected(steps));
    });
    const all = rows.at(-1) ?? [];
    expect(printed(all)).toEqual(expected(plan.steps));
    for (const column of [1, 2, 3]) {
      const sums = rows.slice(0, -1).reduce((sum, row) => sum + minutesOf(row[column]), 0);
      expect(sums).toBe(minutesOf(all[column]));
    }
    const [, formula = ""] = /computed here:(.*?)It is a sum in a row/.exec(seen(html)) ?? [];
    for (const { n, wait } of known)
      expect(formula).toMatch(new RegExp(`${wait} \\([\\d, ]*\\b${n}\\b`));
    expect(seen(html)).toContain("Do not add those hours twice");
  });

  it("the time plan adds a wait that may be longer up from its least to its most", () => {
    const [at = -1] = plan.steps.flatMap(({ wait }, i) => (wait.includes("__") ? [i] : []));
    const steps = plan.steps.map((step, i): typeof step =>
      i === at ? { ...step, wait: "10 to 14 h", waitMinutes: [600, 840] } : step,
    );
    const total = (html: string): string[] =>
      [
        ...(/<tr class="total"><td>All<.*?<\/tr>/.exec(html)?.[0] ?? "").matchAll(
          /<td>(.*?)<\/td>/g,
        ),
      ]
        .map(([, cell = ""]) => cell)
        .slice(4, 6);
    const [known = "", unknown = ""] = total(filled("times", opened, plan));
    const [hours = 0, minutes = ""] = known.split(/(?=:)/);
    expect(total(filled("times", opened, { ...plan, steps }))).toEqual([
      `${Number(hours) + 10}${minutes} to ${Number(hours) + 14}${minutes}`,
      String(Number(unknown) - 1),
    ]);
  });

  it("the worth-it sheet gives the hours of the steps and of the recipe, and leaves the costs to be written in", () => {
    const text = seen(filled("worth", opened, plan));
    const [low, likely, high] = plan.brief.worth?.hours ?? [];
    expect(text).toContain(`not only this one: ${likely}, from ${low} to ${high}`);
    const sums = [0, 1, 2].map((i) => {
      const minutes = plan.steps.reduce((sum, step) => sum + (step.minutes[i] ?? 0), 0);
      return Math.round(minutes / 60);
    });
    expect(text).toMatch(new RegExp(`likely ${sums[1]} ?, from ${sums[0]} to ${sums[2]} ?: the`));
    expect(text).toContain("do not do it, the car is left safe");
  });
});
