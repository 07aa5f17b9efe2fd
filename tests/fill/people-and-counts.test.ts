import { describe, expect, it } from "vitest";
import { effectOf } from "../../src/model/verbs.js";
import { bagKey, bagsOf } from "../../src/fill/bags.js";
import { fill } from "../../src/fill/fill.js";
import { checklist } from "../../src/fill/sheets/checklist.js";
import { filled, inputOf, lists, repairs, seen } from "./filled.js";

describe.each(repairs)("who is there and what is counted on $name", ({ opened, plan }) => {
  const { steps, count } = plan;
  const of = (key: "off" | "added" | "back" | "renewed" | "leftOut"): number =>
    count.reduce((sum, line) => sum + line[key], 0);

  it.each(["checklist", "gather"])("the %s names all who release a hold, and which", (sheet) => {
    const text = seen(filled(sheet, opened, plan));
    const holds = steps.filter((step) => step.hold);
    for (const role of new Set(holds.map(({ hold }) => hold?.role))) {
      const numbers = holds.flatMap(({ hold }, i) => (hold?.role === role ? [i + 1] : []));
      expect(text).toMatch(new RegExp(`${role} (?:releases )?holds ${numbers.join(", ")} `));
    }
  });

  it.each(["checklist", "count"])(
    "the %s prints each side of the balance with room to count it",
    (sheet) => {
      const rows = [...filled(sheet, opened, plan).matchAll(/<td>([^<]*)<\/td><td>(\d+)<\/td>/g)];
      const printed = (what: string): number =>
        Number(rows.find(([, name = ""]) => name.startsWith(what))?.[2]);
      expect(printed("Off the car")).toBe(of("off"));
      expect(printed("Off the car") + printed("Added")).toBe(
        printed("Back, the old") + printed("Back, new") + printed("Left out"),
      );
    },
  );

  it("lists before the start every step with a figure of the maker to write in, and no other", () => {
    const html = filled("checklist", opened, plan);
    const [, section = ""] =
      /Figures to look up(.*?)(?:Coats and sealers|<h3>Waste)/s.exec(html) ?? [];
    const listed = [...section.matchAll(/<p><b>([\d.]+)<\/b>|<\/b> ([\d, to]+)\.<\/p>/g)]
      .map(([, one = "", run = one]) => run)
      .join(", ");
    const blocks = html.split(/data-about="step (?=[\d.]+")/).slice(1);
    const asks = (block: string): boolean =>
      /class="blank figure"[^>]*><\/span>[^<]*<sup>\(M\)/.test(block);
    const found = blocks.map((block) => ({ n: block.split('"')[0] ?? "", asks: asks(block) }));
    expect(found.filter((step) => step.asks).length).toBeGreaterThan(20);
    for (const step of found) expect(lists(listed, step.n), step.n).toBe(step.asks);
  });

  it("says of each figure to look up what it is, in the words of its step", () => {
    const section = seen(
      /Figures to look up(.*?)<h3>/s.exec(filled("checklist", opened, plan))?.[1] ?? "",
    );
    const [asking] = plan.steps.filter(({ figures }) =>
      figures.some(
        ({ kind, source, text }) =>
          kind === "tolerance" && source === "maker" && text.includes("___"),
      ),
    );
    const said = asking?.says ?? "";
    const sentence = said.split(/(?<=\.)\s/).find((one) => one.includes("___")) ?? "";
    expect(sentence.length).toBeGreaterThan(20);
    expect(section).toContain(`${asking?.n} ${sentence.replaceAll(/_{3,}/g, "…")}`);
  });

  it("has a row for each coat with every step that uses it and waits for it, and where", () => {
    const [, table = ""] =
      /Coats and sealers<\/h3>(.*?)<\/table>/s.exec(filled("checklist", opened, plan)) ?? [];
    const rows = table.split("<tr").slice(2).map(seen);
    expect(rows.length).toBeGreaterThan(5);
    const waiting = plan.steps.filter(
      ({ wait, waitSource, uses }) =>
        waitSource === "maker" && wait.includes("___") && uses.length > 0,
    );
    expect(waiting.length).toBeGreaterThan(10);
    let asked = 0;
    for (const { n, uses, touches } of waiting) {
      const names = plan.brief.consumables.filter(
        ({ id, unit }) => unit !== "pieces" && uses.some(({ consumable }) => consumable === id),
      );
      for (const { name } of names) {
        const row = rows.find((one) => one.includes(name)) ?? "";
        asked++;
        expect(row, `${n} ${name}`).toContain(` ${n} ${plan.brief.things[touches[0] ?? ""]}`);
      }
    }
    expect(asked).toBeGreaterThan(10);
    expect(seen(table)).not.toContain("masking");
  });

  it("has a line for a trainee where the sheet of the trainee is printed", () => {
    const input = inputOf(plan);
    const row = "trainee and supervisor, if there is one";
    expect(fill(checklist, input, opened.words)).not.toContain(row);
    expect(fill(checklist, { ...input, printed: ["apprentice"] }, opened.words)).toContain(row);
  });

  it("says which step ends the fire watch for good: no watch and no weld comes after it", () => {
    const text = seen(filled("checklist", opened, plan));
    const [, n = ""] =
      /The watch releases no hold\. Step ([\d.]+) ends it for good, unless a spark has to follow/.exec(
        text,
      ) ?? [];
    const at = steps.findIndex((step) => step.n === n);
    expect(steps[at]?.says).toMatch(/[Rr]elease the fire watch/);
    const later = steps.slice(at + 1).map(({ verb }) => verb);
    for (const verb of ["watch", "weld", "tack", "drill", "dress"])
      expect(later).not.toContain(verb);
  });

  it("has room for the numbers of the photographs at each step that takes some, and at no other", () => {
    const blocks = filled("checklist", opened, plan)
      .split(/data-about="step (?=[\d.]+")/)
      .slice(1);
    const asked = blocks.filter((block) => block.includes('data-about="photographs"'));
    const taken = steps.filter(({ verb }) => verb === "photograph").map(({ n }) => n);
    expect(taken.length).toBeGreaterThan(1);
    expect(asked.map((block) => block.split('"')[0])).toEqual(taken);
  });

  it("asks for each bag to be counted before the first part that goes on after its last fixing is back", () => {
    const lines = filled("count", opened, plan).split("</tr>");
    const rows = lines.map((line) => seen(line).trim()).join("\n");
    const checklist = seen(filled("checklist", opened, plan));
    const closings = steps.filter(
      ({ verb, hides }) => hides.length > 0 && ["on", "fit-new"].includes(effectOf(verb) ?? ""),
    );
    for (const [key, number] of bagsOf(steps)) {
      const back = steps.findLastIndex(
        (step) => bagKey(step) === key && effectOf(step.verb) === "in",
      );
      const closing = closings.find((step) => steps.indexOf(step) > back);
      if (back < 0 || !closing) continue;
      expect(rows).toMatch(new RegExp(`^ ?${closing.n} \\D+ [\\d, ]*\\b${number}\\b`, "m"));
      expect(checklist).toMatch(
        new RegExp(`count sheet: empty by now, bag [\\d, ]*\\b${number}\\b`),
      );
    }
  });

  it("lists the moments to count in the order of the plan", () => {
    const [, table = ""] = filled("count", opened, plan).split('<table class="moments">');
    const rows = [
      ...(table.split("</table>")[0] ?? "").matchAll(/data-about="[^"]*, step ([\d.]+)"/g),
    ];
    const at = rows.map(([, n]) => steps.findIndex((step) => step.n === n));
    expect(at.length).toBeGreaterThan(10);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
  });

  it("asks for a count before the first part comes off, and where the work is left", () => {
    const html = filled("checklist", opened, plan);
    const first = steps.find(({ phase }) => phase === "strip");
    const [, block = ""] = html.split(`data-about="step ${first?.n}"`);
    expect(seen(block.split("<sup>")[0] ?? "").slice(0, 300)).toContain(
      "Count first, two people, count sheet: each bag numbered and empty.",
    );
    const pauses = html.split('data-about="pause point').slice(1).map(seen);
    const nights = steps.filter(({ checks }) => checks.length > 0);
    expect(pauses).toHaveLength(nights.length);
    const at = (n: string): number => steps.findIndex((step) => step.n === n);
    const off = (n: string): boolean => {
      const isOut = new Map<string, boolean>();
      for (const { verb, object, place } of steps.slice(0, at(n)).flatMap(({ does }) => does))
        if (/^(out|in)$/.test(effectOf(verb) ?? ""))
          isOut.set(`${object}@${place}`, effectOf(verb) === "out");
      return [...isOut.values()].includes(true);
    };
    nights.forEach(({ n, night }, i) => {
      const block = pauses[i]?.split("Block complete")[0] ?? "";
      const asks = block.includes("Two people count with the count sheet first");
      expect(asks).toBe(night && off(n));
      const moment = new RegExp(
        `data-about="[^"]*handed over[^"]*, step ${n.replace(".", "\\.")}"`,
      );
      expect(moment.test(filled("count", opened, plan))).toBe(asks);
    });
    expect(nights.some(({ n }) => !off(n))).toBe(true);
  });

  it("uses nothing up again on the way back that the recipe turns round by itself", () => {
    const freed = steps.filter(({ phase, verb }) => phase === "refit" && verb === "lay-back");
    expect(freed.length).toBeGreaterThan(1);
    for (const { uses } of freed) expect(uses).toEqual([]);
  });

  it("pays each helper: never fewer hours than the work takes", () => {
    const text = seen(filled("worth", opened, plan));
    const [, likely = "", paid = ""] =
      /likely (\d+) ?, from .*? asks for one: (\d+) ?, from/.exec(text) ?? [];
    const minutes = steps.reduce((sum, step) => sum + step.minutes[1] * step.people, 0);
    expect(Number(paid)).toBe(Math.round(minutes / 60));
    expect(Number(paid)).toBeGreaterThanOrEqual(Number(likely));
  });

  it("explains the words of the job in the key of the checklist", () => {
    const text = seen(filled("checklist", opened, plan));
    expect(plan.brief.terms.length).toBeGreaterThan(4);
    for (const { term, means } of plan.brief.terms) expect(text).toContain(`${term} ${means}`);
  });

  it("says at each stop between sparks which steps a new day begins with", () => {
    const blocks = filled("checklist", opened, plan).split("Pause point").map(seen);
    const spark = steps.findLastIndex(({ verb }) => verb === "weld");
    const first = steps.findIndex(({ id }) => id.endsWith(".air-again"));
    const between = steps.filter(({ night }, i) => night && first < i && i < spark);
    expect(between.length).toBeGreaterThan(1);
    for (const { n } of between) {
      const [, asked = ""] =
        blocks
          .find((block) => block.includes(`step ${n}.`))
          ?.match(/line of the day: ([\d, to]+)\./) ?? [];
      const again = asked.split(", ").flatMap((run) => {
        const [first = "", last = first] = run.split(" to ");
        return steps.filter((step) => +step.n >= +first && +step.n <= +last);
      });
      const names = again.map(({ id }) => id.split(".").at(-1));
      expect(names).toEqual(expect.arrayContaining(["permit-days", "air-again", "shields-again"]));
      expect(again.every((step) => Number(step.n) < Number(n))).toBe(true);
    }
  });

  it("asks for a torque only where something is tightened", () => {
    const html = filled("apprentice", opened, plan);
    const asked = Number(/Why does the torque.*?\(step ([\d.]+)\)/.exec(html)?.[1]);
    const step = steps.find(({ n }) => Number(n) === asked);
    expect(["in", "make-join"]).toContain(effectOf(step?.verb ?? ""));
  });
});
