import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { signs, stepsOfSign } from "../../src/fill/signs.js";
import { stepList } from "../../src/fill/step-list.js";
import { own, planned } from "../plans.js";
import { filled, lists, repairs, seen } from "./filled.js";

describe.each(repairs)("the hazard sheet of $name", ({ opened, plan }) => {
  const html = filled("hazards", opened, plan);
  const text = seen(html);
  const said = [...plan.brief.safety, ...plan.steps.flatMap(({ messages }) => messages)];

  /** What the table of the sheet says to wear at a step. */
  const wornAt = (n: string): string => {
    const rows = html.slice(html.indexOf("by kind of work"), html.indexOf("Gloves on, gloves off"));
    const row = rows.split("<tr ").find((one) => {
      const [, steps = ""] = /^data-about="steps ([^"]*)"/.exec(one) ?? [];
      return steps !== "" && lists(steps, n);
    });
    return seen(row ?? "");
  };

  it("holds each message of the job once, in full", () => {
    expect(said.length).toBeGreaterThan(30);
    for (const { hazard, avoid, consequence } of said)
      expect(text.split(`${hazard}. ${avoid} ${consequence}`)).toHaveLength(2);
  });

  it("loses no message that shares its hazard with another", () => {
    const [first, ...rest] = plan.steps;
    const known = said.find(({ word }) => word === "danger");
    if (!first || !known) throw new Error("the plan has no danger");
    const messages = [known, { ...known, avoid: "Stay away until it is dry." }];
    const changed = { ...plan, steps: [{ ...first, messages }, ...rest] };
    const both = seen(filled("hazards", opened, changed));
    for (const { avoid } of messages) expect(both).toContain(`${known.hazard}. ${avoid}`);
  });

  it("says how far from sparks nothing may burn, how long is watched after them, and at which steps", () => {
    const far = plan.steps.find(({ says }) => says.includes("11 m"));
    const watch = plan.steps.find(({ verb }) => verb === "watch");
    // 35 ft: NFPA 51B-2019; 60 min: the longest watch of the codes in the table of the fire watch.
    expect(text).toMatch(new RegExp(`nearer to them than 35\\s?ft, 11\\s?m \\(step ${far?.n}\\)`));
    expect(text).toMatch(new RegExp(`stays 60\\s?min after the last one \\(step ${watch?.n}\\)`));
  });

  it("puts the gravest first", () => {
    const words = [...html.matchAll(/class="message (\w+)"/g)].map((match) => match[1] ?? "");
    const order = ["danger", "warning", "caution", "notice"];
    expect(words.length).toBeGreaterThan(8);
    expect(words).toEqual(words.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
  });

  it("names the steps at which a message stands", () => {
    const raise = plan.steps.find(({ verb }) => verb === "raise");
    expect(text).toMatch(
      new RegExp(`Car that falls\\..*? It stands at steps? [^.]*\\b${raise?.n}\\b`),
    );
  });

  it("asks for mask, gloves and closed clothes at every step done with the welder", () => {
    // Its earth clamp is set without an arc.
    const welding = plan.steps.filter(
      ({ tools, verb }) => tools.includes("welder") && verb !== "set-out",
    );
    expect(welding.length).toBeGreaterThan(3);
    for (const code of ["M009", "M010", "M017", "M019"])
      expect(stepsOfSign(code, plan.steps)).toEqual(expect.arrayContaining(welding));
    for (const { n } of welding)
      for (const wear of ["welding mask", "welding gloves", "closed clothes", "metal fume"])
        expect(wornAt(n), n).toContain(wear);
  });

  it("says of each step what to wear: all that its messages ask for", () => {
    expect(plan.steps.flatMap(({ messages }) => messages).length).toBeGreaterThan(60);
    for (const { n, messages } of plan.steps)
      for (const { name } of messages.flatMap(({ wear = [] }) => wear))
        expect(wornAt(n), n).toContain(name);
  });

  it("asks for at most one thing for the lungs at a step, and names it once", () => {
    const masked = plan.steps.map(({ n, messages }) => {
      const masks = messages.flatMap(({ wear = [] }) => wear.filter((one) => one.for === "lungs"));
      return { n, masks: [...new Set(masks.map(({ name }) => name))] };
    });
    expect(masked.filter(({ masks }) => masks.length > 0).length).toBeGreaterThan(10);
    for (const { n, masks } of masked) {
      expect(masks.length, n).toBeLessThan(2);
      for (const mask of masks) expect(wornAt(n).split(mask), n).toHaveLength(2);
    }
  });

  it("does not name eye protection beside closed eye protection", () => {
    const closed = plan.steps.filter(({ messages }) =>
      messages.some(({ wear = [] }) => wear.some(({ id }) => id === "closed-eye-protection")),
    );
    expect(closed.length).toBeGreaterThan(0);
    for (const { n } of closed) {
      const eyes = wornAt(n).match(/(?<!over the )(closed )?eye protection/g);
      expect(eyes, n).toEqual(["closed eye protection"]);
    }
  });

  it("has on its lists what each message says to wear, and the sign for it", () => {
    const worn = said.filter(({ avoid }) => /\bWear (?!no\b)/.test(avoid));
    const codes = [
      [/gloves/, "M009"],
      [/eye protection/, "M004"],
      [/ear protection/, "M003"],
      [/welding mask/, "M019"],
      [/(metal fume|vapour mask|P3)/, "M017"],
      [/clothes/, "M010"],
    ] as const;
    expect(worn.length).toBeGreaterThan(5);
    const list = seen(filled("gather", opened, plan));
    for (const { hazard, wear = [], signs: called = [] } of worn) {
      expect(wear, hazard).not.toEqual([]);
      for (const { name } of wear) {
        expect(list).toContain(name);
        for (const [words, code] of codes)
          if (words.test(name)) expect(called, name).toContain(code);
      }
    }
  });

  it("puts each step in one row of what to wear", () => {
    const rows = [...html.matchAll(/<tr data-about="steps ([^"]*)"/g)].map(
      ([, steps = ""]) => steps,
    );
    expect(rows.length).toBeGreaterThan(15);
    for (const { n, messages } of plan.steps) {
      const asks = messages.some(({ wear }) => wear !== undefined);
      expect(rows.filter((steps) => lists(steps, n)).length, n).toBe(asks ? 1 : 0);
    }
  });

  it("says at which steps gloves are worn and at which none", () => {
    const table = html.slice(html.indexOf('class="gloves"'), html.indexOf("Which signs"));
    const rows = table.split("<tr>").map((row) => seen(row.split("</tr>")[0] ?? "").trim());
    const at = (wear: string): string =>
      rows.find((row) => row.startsWith(`${wear} `) && /^ \d/.test(row.slice(wear.length))) ?? "";
    for (const { n, messages } of plan.steps) {
      const gloves = messages.flatMap(({ wear = [] }) =>
        wear.filter(({ name }) => /gloves/.test(name)),
      );
      for (const { name } of gloves)
        expect(lists(at(name).slice(name.length + 1), n), n).toBe(true);
      if (!messages.some(({ signs: called = [] }) => called.includes("P028"))) continue;
      const none = "no gloves while the drill turns";
      expect(lists(at(none).slice(none.length + 1), n), n).toBe(true);
      expect(wornAt(n)).toContain(none);
    }
  });

  it("hangs each sign at a place, and none that changes from step to step", () => {
    const table = html.slice(html.indexOf('class="signs"'), html.indexOf("Who must permit"));
    const called = new Set(said.flatMap(({ signs: codes = [] }) => codes));
    expect(called.has("M009") && called.has("P028")).toBe(true);
    for (const code of called) {
      if (code === "M009") continue;
      expect(table).toMatch(new RegExp(`<b>${code}( \\*)?</b></td><td>[^<]+</td><td>[^<]+</td>`));
    }
    expect(table).not.toContain("<b>M009");
    expect(seen(table)).toContain("on the drill, and nowhere else");
    expect(seen(table)).toContain("Not hung up, because it changes from step to step: M009");
  });

  it("hangs no sign for gloves where a turning drill forbids them", () => {
    const drilling = stepsOfSign("P028", plan.steps);
    expect(drilling.length).toBeGreaterThan(3);
    const gloved = stepsOfSign("M009", plan.steps).filter((step) => drilling.includes(step));
    expect(gloved.map(({ says }) => says)).toEqual([]);
  });
});

/** What to do in an emergency, on the hazard sheet of a plan. */
function emergency(html: string): string {
  const [, rest = ""] = html.split("<h2>In an emergency</h2>");
  return seen(rest.split("</section>")[0] ?? "");
}

describe("what to do in an emergency", () => {
  const [repair] = repairs;
  const strip = planned({ job: "carpet" }, own);
  if (!repair || !strip.value) throw new Error("nothing is planned");
  const welded = emergency(filled("hazards", repair.opened, repair.plan));
  const stripped = emergency(filled("hazards", strip.opened, strip.value));

  it("has the people out before anything is put out, called for or saved", () => {
    for (const text of [welded, stripped]) {
      const [, fire = ""] = text.split("It burns or smokes");
      const order = ["Everybody comes out", "emergency number", "small fire"];
      const at = order.map((words) => fire.indexOf(words));
      expect(at.every((place) => place >= 0)).toBe(true);
      expect(at).toEqual(at.toSorted((a, b) => a - b));
      expect(text).toContain("Nobody holds the car");
    }
  });

  it("speaks of welding set and gas bottle only where something is welded", () => {
    expect(welded).toContain("switches the welding set off and shuts the gas bottle");
    expect(stripped).not.toMatch(/weld|bottle/);
    expect(stripped).toContain("switches the mains off");
  });
});

describe("the table of signs", () => {
  const phrases = readFileSync("templates/words.en.yaml", "utf8");

  it("is that of the schema, so that no sign of a message is lost on paper", () => {
    const shared = JSON.parse(readFileSync("schemas/shared.schema.json", "utf8"));
    const known: string[] = shared.$defs.message.properties.signs.items.enum;
    expect(signs.map(({ code }) => code)).toEqual(known);
  });

  it.each(signs)("has words for $code", ({ code }) => {
    expect(phrases).toMatch(new RegExp(`^  sign-${code}: \\S`, "m"));
    const placed = new RegExp(`^  place-${code}: \\S`, "m").test(phrases);
    expect(placed).toBe(code !== "M009");
  });
});

describe("a list of steps", () => {
  const plan = repairs[0]?.plan.steps ?? [];

  it("joins neighbours of the plan", () => {
    const some = [1, 2, 3, 5, 6, 9].flatMap((at) => plan[at] ?? []);
    expect(stepList(some, plan, "to")).toBe("2 to 4, 6, 7, 10");
  });
});
