import { describe, expect, it } from "vitest";
import { skillsOf } from "../../src/fill/skills.js";
import { holdsOf } from "../../src/fill/stops.js";
import { filled, labels, lists, repairs, seen } from "./filled.js";

describe.each(repairs)("the apprentice sign-off of $name", ({ opened, plan }) => {
  const html = filled("apprentice", opened, plan);
  const text = seen(html);
  const rows = html
    .split("<tr")
    .map((part) => part.split("</tr>")[0] ?? "")
    .map((row) => ({ row, words: seen(row) }));

  it("prints its own five levels", () => {
    const levels = ["told", "watched", "helped", "did under eyes", "did alone"];
    for (const [i, level] of levels.entries()) expect(text).toContain(`${i + 1} ${level} `);
  });

  it("has a line for every task of the plan", () => {
    expect(plan.brief.tasks.length).toBeGreaterThan(20);
    for (const { title } of plan.brief.tasks) expect(text).toContain(title);
  });

  it("prints what each hold is released by as the standard, and who releases it", () => {
    const holds = plan.steps.flatMap(({ hold }) => (hold ? [hold] : []));
    expect(holds.length).toBeGreaterThan(10);
    for (const { accept } of holds) expect(text).toContain(accept.replaceAll(/_{3,}/g, "…"));
    for (const role of new Set(holds.map((hold) => hold.role)))
      expect(text).toMatch(new RegExp(`Hold points are released by: .*${role} \\(`));
  });

  it("leaves no room for a trainee's hand where a hold is released", () => {
    const released = rows.filter(({ words }) => words.includes("Hold points are released by"));
    expect(released.length).toBeGreaterThan(5);
    for (const { row, words } of released) {
      expect(row).not.toMatch(/class="(pen|box|blank)/);
      expect(words).toContain("Never by the trainee.");
    }
  });

  it("leaves none where a line holds nothing but holds", () => {
    const { steps } = plan;
    const holds = steps.filter(({ hold }) => hold);
    const alone = skillsOf(holds, holdsOf(holds), opened.words);
    expect(alone.length).toBeGreaterThan(5);
    expect(alone.filter(({ holdsOnly }) => !holdsOnly)).toEqual([]);
    const only = filled("apprentice", opened, { ...plan, steps: holds });
    expect(only.slice(only.indexOf("Task by task"), only.indexOf("Why?"))).not.toContain(
      `class="pen"`,
    );
  });

  it("asks why, of every danger and every critical fact of the plan, with two lines for each answer", () => {
    const grave = plan.steps.flatMap(({ messages }) => messages.filter((m) => m.word === "danger"));
    expect(grave.length).toBeGreaterThan(2);
    for (const { hazard } of grave)
      expect(text).toContain(`The sheet warns: ${hazard}. What can happen, and what do you do?`);
    const done = plan.steps.filter(({ hold }) => hold === undefined);
    const critical = new Set(done.flatMap(({ critical: one = [] }) => one));
    expect(text.split("What happens on the road if this is done badly?").length - 1).toBe(
      critical.size,
    );
    const answers = labels(html).filter((label) => label.startsWith("answer "));
    expect(text).not.toContain("___");
    const questions = html.split('class="why ').length - 1;
    expect(questions).toBeGreaterThan(new Set(grave.map(({ hazard }) => hazard)).size);
    expect(answers).toHaveLength(2 * questions);
  });

  it("prints no hold and no pause point among the steps that a trainee signs", () => {
    const closed = plan.steps.filter(({ hold, checks }) => hold || checks.length > 0);
    const tasks = rows.filter(
      ({ row }) => row.includes('class="pen"') && row.includes("steps&nbsp;"),
    );
    expect(tasks.length).toBeGreaterThan(20);
    for (const { words } of tasks) {
      const [, at = ""] = / steps ((?:[\d.]+(?:, | to )?)+)/.exec(words) ?? [];
      expect(at).not.toBe("");
      for (const { n } of closed) expect(lists(at, n), `${n} in ${at}`).toBe(false);
    }
  });

  /** The words of each task: its title, and what it is judged by. */
  const tasks = html
    .split('<tr class="line keep"')
    .slice(1)
    .map((part) => seen(`<tr${part.split("</table>")[0] ?? ""}`).trim());
  const free = tasks.filter(
    (words) => !words.includes("level 4 is the highest") && !words.includes("Look on only"),
  );

  it("lets nobody learn alone what can hurt, what is critical or what takes two", () => {
    expect(tasks.length).toBeGreaterThan(20);
    expect(free.length).toBeGreaterThan(3);
    const grave = skillsOf(plan.steps, holdsOf(plan.steps), opened.words).filter(
      ({ critical }) => critical.length > 0,
    );
    expect(grave.filter(({ neverAlone }) => !neverAlone)).toEqual([]);
    for (const title of [
      "Lower end of the front belt",
      "Belt buckle",
      "Sound-deadening",
      "Battery",
    ]) {
      expect(
        tasks.some((words) => words.startsWith(title)),
        title,
      ).toBe(true);
      expect(
        free.some((words) => words.startsWith(title)),
        title,
      ).toBe(false);
    }
  });

  it("names in one line the parts that a trainee may come to do alone, and no other task", () => {
    const [, line = ""] = /May be done alone then: ([^.]*)\./.exec(text) ?? [];
    const named = line.split("; ").map((one) => one.trim());
    expect(named.length).toBeGreaterThan(5);
    for (const name of named)
      expect(
        free.some((words) => words.startsWith(name)),
        name,
      ).toBe(true);
    const parts = free.filter(
      (words) => !/^[^.]*: (Prepare|Record|Repair|Refit|Close)/.test(words),
    );
    expect(parts.length).toBe(named.length);
  });

  it("gives the reasons of each 'never alone' with their steps, and what is done about each danger", () => {
    const skills = skillsOf(plan.steps, holdsOf(plan.steps), opened.words);
    const at = (reasons: string, name: string): string =>
      reasons.split(`${name} (`)[1]?.split(")")[0] ?? "";
    for (const step of plan.steps) {
      const mine = skills.filter(({ at: list }) => lists(list, step.n));
      const reasons = mine.map(({ neverAlone }) => neverAlone).join("; ");
      const asked = [
        ...(step.critical === undefined ? [] : ["critical work"]),
        ...(step.people > 1 ? ["two people or more"] : []),
        ...(step.verb === "permit" ? ["a permit or an inspection"] : []),
        ...step.messages
          .filter(({ word }) => word === "danger" || word === "warning")
          .map(({ word }) => `a ${word.toUpperCase()} message`),
      ];
      if (mine.length === 0) continue;
      for (const reason of asked)
        expect(lists(at(reasons, reason), step.n), `${step.n} ${reason}`).toBe(true);
    }
    const lines = text.split("Never alone, level 4 is the highest: ").slice(1);
    expect(lines.length).toBeGreaterThan(15);
    for (const line of lines) expect(line).toMatch(/^[^.]*\(\d/);
    for (const { word, hazard, avoid } of plan.steps.flatMap(({ messages }) => messages))
      if (word === "danger") expect(text).toMatch(new RegExp(`${hazard}\\. .*${avoid}`));
  });

  it("judges by the limits of the steps, each with its step", () => {
    const hands = plan.steps.filter(
      ({ hold, checks, verb }) => !hold && checks.length === 0 && verb !== "try",
    );
    const limits = hands.flatMap(({ says, figures }) =>
      says
        .split(/(?<=[.!?])\s+/)
        .filter((one) => /\b(must|may)\b/.test(one) || figures.some((f) => one.includes(f.text))),
    );
    expect(limits.length).toBeGreaterThan(60);
    for (const limit of limits)
      expect(text).toMatch(
        new RegExp(`\\d ${limit.replaceAll(/_{3,}/g, "…").replaceAll(/[()?*+.]/g, "\\$&")}`),
      );
  });

  it("names the hold behind a part of the repair that has none of its own", () => {
    const without = rows.filter(({ words }) => words.includes("The next hold behind it is"));
    expect(without.length).toBeGreaterThan(2);
    for (const { words } of without) {
      const [, number = "", n = ""] =
        /next hold behind it is (\d+), step (\d+)\./.exec(words) ?? [];
      const hold = holdsOf(plan.steps).find((one) => String(one.number) === number);
      expect(hold?.n).toBe(n);
    }
    expect(text).not.toContain("nothing broken, nothing left over");
  });

  it("names each row by its work, and no two alike", () => {
    const named = rows
      .filter(({ row }) => row.startsWith(' class="line keep"'))
      .flatMap(({ words }) => /^[^>]*> (.*?) steps? [\d]/.exec(words)?.[1] ?? []);
    expect(named.length).toBeGreaterThan(20);
    expect(new Set(named).size).toBe(named.length);
    for (const name of named) expect(name).not.toContain(plan.brief.title);
  });

  it("is judged as a whole by somebody else", () => {
    expect(labels(html)).toContain("assessor has not trained this trainee");
    expect(labels(html)).toContain("signature of the assessor");
  });
});
