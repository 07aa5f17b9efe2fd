import { describe, expect, it } from "vitest";
import { filled, labels, repairs, lists, seen } from "./filled.js";

describe.each(repairs)("the handover note of $name", ({ opened, plan }) => {
  const html = filled("handover", opened, plan);
  const text = seen(html);

  it("asks for all that the next person must know", () => {
    for (const asked of ["Half done", "Parts off", "Tools", "Defects found", "Nobody may"])
      expect(text).toContain(asked);
    for (const blank of [
      "last step done",
      "phone of the person who leaves",
      "both at the car from",
    ])
      expect(labels(html)).toContain(blank);
  });

  it("names every pause point with its step", () => {
    const stops = plan.steps.filter(({ checks }) => checks.length > 0);
    expect(stops.length).toBeGreaterThan(1);
    for (const [i, { n, night }] of stops.entries())
      expect(text).toContain(`${String.fromCharCode(65 + i)} ${n} ${night ? "yes" : "no"}`);
  });

  const rows = html
    .split('<li class="guarded">')
    .map((row) => seen(row.split("</li>")[0] ?? "").trim());

  /** The row of an object in the list of what is open. */
  const rowsOf = (key: string): string[] => {
    const name = plan.brief.things[key] ?? "?";
    return rows.filter((row) => row.startsWith(name) && /^ (\d|Over)/.test(row.slice(name.length)));
  };

  it("names things, not sentences, and each once under its heading", () => {
    expect(rows.length).toBeGreaterThan(50);
    for (const { says } of plan.steps.filter(({ verb }) => verb === "shield" || verb === "isolate"))
      expect(text).not.toContain(says);
    const spoken = labels(html).filter((label) => label.startsWith("open now: "));
    expect(new Set(spoken).size).toBe(spoken.length);
  });

  it("lists all that is off, parted, eased, set out, shielded, raised, braced or drained until it is undone and its fixings are in", () => {
    const pairs: Record<string, string[]> = {
      "lift-out": ["put-in", "fit-new", "try-in", "leave-off"],
      "cut-out": ["fit-new"],
      unplug: ["plug-in"],
      unhook: ["hook-on"],
      "fold-back": ["lay-back"],
      ease: ["settle"],
      "tie-aside": ["free"],
      "set-out": ["clear-away", "clamp"],
      shield: ["unshield"],
      raise: ["lower"],
      brace: ["unbrace"],
      isolate: ["restore"],
      drain: ["fill"],
    };
    const begun = plan.steps.filter(({ verb }) => verb in pairs);
    expect(begun.length).toBeGreaterThan(60);
    for (const { n, verb, does } of begun) {
      const [change] = does;
      const key = [change?.object, change?.place].filter((one) => one !== "").join("@");
      const after = plan.steps.slice(plan.steps.findIndex((step) => step.n === n) + 1);
      const end = after.find(
        (step) =>
          pairs[verb]?.includes(step.verb) === true &&
          step.does.some((d) => d.object === change?.object && d.place === change.place),
      );
      const fixed = plan.steps.findLast(
        (step) =>
          end?.phase === "refit" &&
          ["lift-out", "fold-back", "ease", "tie-aside"].includes(verb) &&
          step.task === end.task &&
          step.position === end.position &&
          ["do-up", "clip-in", "press-in", "rivet"].includes(step.verb),
      );
      const late =
        plan.steps.findIndex((step) => step.n === fixed?.n) >
        plan.steps.findIndex((step) => step.n === end?.n);
      const said = `${n} to ${late ? fixed?.n : end?.n}`;
      expect(
        rowsOf(key).some((row) => row.includes(said)),
        `${key}: ${said}`,
      ).toBe(true);
    }
  });

  it("gives a thing that is opened twice both spans in one row", () => {
    const twice = rows.filter((row) => /\d+ to \d+, \d+ to \d+/.test(row));
    expect(twice.some((row) => row.includes("bond of the can"))).toBe(true);
    expect(rowsOf("drain-bond")).toHaveLength(1);
  });

  it("takes a seat for in while it is tried, and lists the trial", () => {
    const tried = plan.steps.filter(({ verb }) => verb === "try-in");
    expect(tried.length).toBeGreaterThan(0);
    for (const { n, does } of tried) {
      const [change] = does;
      const mine = rowsOf(`${change?.object}@${change?.place}`);
      expect(mine).toHaveLength(2);
      expect(mine.some((row) => row.includes(` to ${n},`))).toBe(true);
      expect(mine.some((row) => row.includes(` ${n} to `))).toBe(true);
    }
  });

  it("lists clamps and masks of a panel until the step that takes them off", () => {
    const clamps = plan.steps.filter(
      ({ verb, does: [change] }) => verb === "clamp" && change?.object !== "earth-clamp",
    );
    expect(clamps.length).toBeGreaterThan(1);
    for (const { n, does } of clamps) {
      const after = plan.steps.slice(plan.steps.findIndex((step) => step.n === n));
      const off = after.find(
        (step) =>
          step.verb === "remove" &&
          [does[0]?.object, "clamps"].some((what) => step.does[0]?.object.endsWith(what ?? "?")),
      );
      expect(rowsOf(does[0]?.object ?? "").join()).toContain(`${n} to ${off?.n}`);
    }
  });

  it("says at which stops nobody watches for fire, and what a new day begins with", () => {
    const at = (verb: string): number =>
      plan.steps.findIndex((step) => step.verb === verb && step.does[0]?.object === "fire-guard");
    const stops = plan.steps.filter(({ checks }) => checks.length > 0);
    const inside = stops.filter((step) => {
      const here = plan.steps.indexOf(step);
      return step.night && here > at("set-out") && here < at("clear-away");
    });
    const letters = inside.map((step) => String.fromCharCode(65 + stops.indexOf(step)));
    expect(letters.length).toBeGreaterThan(2);
    expect(rowsOf("fire-guard").join()).toContain(`for the night at ${letters.join(", ")}.`);
    for (const { n, again } of stops) {
      const [, printed = ""] =
        new RegExp(` ${n} (?:yes|no)[^A-Z]*? (none|\\d[\\d, to]*) `).exec(text) ?? [];
      const asked = plan.steps.filter((step) => lists(printed, step.n)).map(({ id }) => id);
      expect(asked, n).toEqual(again);
    }
  });
});

describe.each(repairs)("the sheet that keeps $name off the road", ({ opened, plan }) => {
  const html = filled("road", opened, plan);
  const text = seen(html);

  it("gives a line to every hold, by who releases it, and to those who permit", () => {
    const holds = plan.steps.filter((step) => step.hold);
    const rows = [...html.matchAll(/data-about="hold (\d+)"/g)].map(([, number]) => Number(number));
    expect(rows.toSorted((a, b) => a - b)).toEqual(holds.map((_, i) => i + 1));
    for (const role of new Set(holds.map(({ hold }) => hold?.role)))
      expect(text).toContain(`By the ${role}`);
    expect(plan.brief.permits.length).toBeGreaterThan(1);
    for (const { who } of plan.brief.permits)
      expect(text).toMatch(new RegExp(`By others .*${who}`));
  });

  it("tells the left from the right", () => {
    const sided = plan.steps.filter(({ hold, position }) => hold && position !== "");
    expect(sided.length).toBeGreaterThan(4);
    for (const { n, title, position } of sided)
      expect(text).toContain(` ${n} ${title}, ${position}.`);
  });

  it("has a line to write on for each figure of the maker that a release asks for", () => {
    const asked = plan.steps.flatMap(({ hold }) => hold?.accept.match(/_{3,}/g) ?? []);
    expect(asked.length).toBeGreaterThan(1);
    expect(text).not.toContain("…");
    expect(labels(html).filter((label) => label.startsWith("value to write in"))).toHaveLength(
      asked.length,
    );
  });

  it("has room for what is not released and why, and bars the way on", () => {
    expect(text).toContain("the work stops at that hold and nobody goes on");
    const table = html.slice(html.indexOf('data-about="not released"'));
    expect(table.slice(0, table.indexOf("</table>")).split('class="pen"').length).toBe(17);
  });

  it("lies with the key until the lead technician has signed it", () => {
    expect(text).toContain("this sheet lies with the key");
    expect(labels(html)).toContain("signature of the lead technician");
    const set = plan.steps.find(({ verb, says }) => verb === "set-out" && says.includes("road"));
    expect(set?.says).toContain("with the key");
  });

  it("lets the key go for one step at a time, and for good by the lead technician alone", () => {
    expect(text).toContain("hands it out for that step alone and takes it back after it");
    expect(text).toContain("Nobody but the lead technician signs here.");
    const asks = plan.steps.filter(({ says }) => says.includes("lead technician's key"));
    expect(asks.length).toBeGreaterThan(1);
    for (const { says } of asks)
      expect(says).toContain("The key must go back to the lead technician at once.");
    const held = plan.steps.findLastIndex(({ hold }) => hold);
    const freed = plan.steps.findIndex(
      ({ verb, says }) => verb === "clear-away" && /road/.test(says),
    );
    expect(freed).toBeGreaterThan(held);
    expect(plan.steps.at(-1)?.says).toMatch(/Nobody but the lead technician .*key/);
  });
});
