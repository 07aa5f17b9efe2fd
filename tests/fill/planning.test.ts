import { describe, expect, it } from "vitest";
import { filled, repairs, seen } from "./filled.js";

describe.each(repairs)("the planning sheets of $name", ({ opened, plan }) => {
  it("the time plan asks for as many people as the checklist says at the same block", () => {
    const people = (sheet: string, pattern: RegExp): string[] =>
      [...filled(sheet, opened, plan).matchAll(pattern)].map(([, n = ""]) =>
        n === "" ? "1" : (n.split("–").at(-1) ?? ""),
      );
    const planned = people(
      "times",
      /<tr data-about="steps[^>]*>.*?<td>([\d–]+)<\/td><td class="pen">/g,
    );
    const checked = people(
      "checklist",
      /<p class="meta">[^<]*?(?:1\u00A0person|(\d+)\u00A0people)<\/p>/g,
    );
    expect(planned.length).toBeGreaterThan(80);
    expect(checked).toEqual(planned);
  });

  it("the time plan says in which block somebody must come to release a hold", () => {
    const rows = filled("times", opened, plan).split('<tr data-about="steps ').slice(1);
    const place = new Map(plan.steps.map((step, i) => [step.n, i]));
    const at = (n = ""): number => place.get(n) ?? Number.NaN;
    const holds = plan.steps.flatMap(({ n, hold }) => (hold ? [{ n, role: hold.role }] : []));
    expect(holds.length).toBeGreaterThan(20);
    for (const [i, { n, role }] of holds.entries()) {
      const row = rows.find((one) => {
        const [, from, to] = /^([\d.]+) to ([\d.]+)"/.exec(one) ?? [];
        return at(from) <= at(n) && at(n) <= at(to);
      });
      expect(seen(row ?? "")).toContain(`hold ${i + 1}, step ${n}`);
      expect(seen(row ?? "")).toContain(`${role} must come:`);
    }
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
    const likely = minutesOf(rows.at(-1)?.[2]);
    const [, inRow = ""] = /one after the other: <b>([\d:]+)<\/b>/.exec(html) ?? [];
    expect(minutesOf(inRow)).toBe(likely + plan.steps.reduce((sum, step) => sum + waitOf(step), 0));
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
