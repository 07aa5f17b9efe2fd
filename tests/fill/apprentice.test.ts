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

  it("lets nobody learn alone what can hurt, what is critical or what takes two", () => {
    const alone = rows.filter(
      ({ row }) => row.includes("steps&nbsp;") && !row.includes("level 4 is the highest"),
    );
    expect(alone.length).toBeGreaterThan(3);
    const grave = skillsOf(plan.steps, holdsOf(plan.steps), opened.words).filter(
      ({ critical }) => critical.length > 0,
    );
    expect(grave.filter(({ neverAlone }) => !neverAlone)).toEqual([]);
    for (const title of ["Front belt", "Belt buckle", "Sound-deadening pad", "Battery"])
      expect(alone.some(({ words }) => words.trim().startsWith(title))).toBe(false);
    expect(text).toContain("Works safely with: Asbestos or lead");
  });

  it("is judged as a whole by somebody else", () => {
    expect(labels(html)).toContain("assessor has not trained this trainee");
    expect(labels(html)).toContain("signature of the assessor");
  });
});
