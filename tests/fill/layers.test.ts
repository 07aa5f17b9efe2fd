import { type Element, isTag } from "domhandler";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { PlanFile } from "../../src/index.js";
import { fill } from "../../src/fill/fill.js";
import { layers } from "../../src/fill/sheets/layers.js";
import { hasClass, readHtml } from "../../src/layout/dom.js";
import { layout } from "../../src/layout/layout.js";
import { textContent } from "../../src/layout/text.js";
import type { Step } from "../../src/model/plan.js";
import type { Content, Item, Tag } from "../../src/model/page.js";
import { verbs } from "../../src/model/verbs.js";
import { jobsOf, opened, own, planned } from "../plans.js";
import { inputOf } from "./filled.js";

const css = { text: readFileSync("templates/sheet.css", "utf8"), file: "sheet.css" };
const { words } = opened(own);

const jobs: { name: string; plan: PlanFile }[] = jobsOf(opened(own))
  .filter(({ name }) => /^(seat-crossmember|floor-pan-section|carpet)\b/.test(name))
  .map(({ name, ask }) => {
    const { value } = planned(ask, own);
    if (!value) throw new Error(name);
    return { name, plan: value };
  });

/** A part as it is drawn: its name and, side by side, its steps out and back. */
interface Entry {
  name: string;
  steps: string[];
}

/** What stands in the slab of a pile, and in the slabs that stand on it; one drawn again has no steps. */
interface Stack {
  entries: Entry[];
  over: Stack[];
}

function tagged({ children }: Element, name: string): Element[] {
  return children.filter(isTag).filter((child) => hasClass(child, name));
}

function within(element: Element, name: string): Element[] {
  const inner = element.children.filter(isTag).flatMap((child) => within(child, name));
  return hasClass(element, name) ? [element, ...inner] : inner;
}

function stackOf(pile: Element): Stack {
  const lines = tagged(pile, "slab").flatMap(({ children }) => children.filter(isTag));
  const entries = lines.map((line) => {
    const bold = line.children.filter(isTag).find(({ name }) => name === "b");
    const steps = textContent(line).match(/\d+(\/\d+)?/g) ?? [];
    return { name: textContent(bold ?? line), steps: [...steps] };
  });
  const over = tagged(pile, "piles").flatMap((row) => tagged(row, "pile").map(stackOf));
  return { entries, over };
}

function drawnOf(plan: PlanFile): { view: Element; stacks: Stack[] } {
  const root = readHtml(fill(layers, inputOf(plan), words));
  const view = root && within(root, "side-view")[0];
  if (!view) throw new Error("nothing is drawn");
  const all = within(view, "pile").map(stackOf);
  const standing = new Set(all.flatMap(({ over }) => over.map((one) => JSON.stringify(one))));
  return { view, stacks: all.filter((one) => !standing.has(JSON.stringify(one))) };
}

function allOf(stack: Stack): Stack[] {
  return [stack, ...stack.over.flatMap(allOf)];
}

function partsOf({ steps }: PlanFile): Step[] {
  return steps.filter(
    ({ verb, phase }) =>
      verb === "cut-out" ||
      (phase === "strip" && ["off", "ease"].includes(verbs[verb]?.effect ?? "")),
  );
}

/** The plan's steps that an entry stands for; one drawn again stands for all of its name. */
function stepsOf({ name, steps }: Entry, plan: PlanFile): Step[] {
  const out = steps.map((one) => one.split("/")[0]);
  return partsOf(plan).filter(({ n, part = "" }) =>
    steps.length === 0 ? plan.brief.parts[part] === name : out.includes(n),
  );
}

const hides = (step: Step, other: Step): boolean => step.hides.includes(other.touches[0] ?? "");

describe.each(jobs)("the layers of $name", ({ plan }) => {
  const { view, stacks } = drawnOf(plan);
  const all = stacks.flatMap(allOf);
  const entries = all.flatMap((stack) => stack.entries);
  const arrows = all.flatMap(({ entries: below, over }) =>
    over.flatMap((one) => one.entries.flatMap((from) => below.map((to) => [from, to] as const))),
  );

  it("every part that comes off is drawn once, with its step off and the step that puts it back", () => {
    const drawn = entries.flatMap(({ steps }) => steps).sort();
    const due = partsOf(plan).map(({ n, touches: [key] }) => {
      const back = plan.steps.findLast(
        ({ verb, touches }) =>
          touches[0] === key && /^(put-in|fit-new|lay-back|settle|free)$/.test(verb),
      );
      expect(Number(back?.n)).toBeGreaterThan(Number(n));
      return `${n}/${back?.n}`;
    });
    expect(drawn).toEqual(due.sort());
  });

  it("its name and side stand beside its steps", () => {
    const text = textContent(view).replaceAll(/\s+/g, " ");
    for (const { n, part = "", position } of partsOf(plan)) {
      const own = entries.find(({ steps }) => steps.some((one) => one.startsWith(`${n}/`)));
      expect(own?.name).toBe(plan.brief.parts[part]);
      if (position !== "") expect(text).toMatch(new RegExp(`${position} ?${n}/`));
    }
  });

  it("every part that hides another leads down to it by arrows", () => {
    const next = new Map<string, Set<string>>();
    for (const [from, to] of arrows)
      for (const { n } of stepsOf(from, plan)) {
        const known = next.get(n) ?? new Set();
        next.set(n, known);
        for (const under of stepsOf(to, plan)) known.add(under.n);
      }
    const reached = (n: string): string[] =>
      [...(next.get(n) ?? [])].flatMap((one) => [one, ...reached(one)]);
    const parts = partsOf(plan);
    const pairs = parts.flatMap((a) =>
      parts.filter((b) => hides(a, b)).map((b) => [a, b] as const),
    );
    expect(pairs.length).toBeGreaterThan(10);
    for (const [a, b] of pairs) expect(reached(a.n), `${a.id} over ${b.id}`).toContain(b.n);
  });

  it("no arrow says what the plan does not", () => {
    for (const [from, to] of arrows) {
      const said = stepsOf(from, plan).some((a) => stepsOf(to, plan).some((b) => hides(a, b)));
      expect(said, `${from.name} over ${to.name}`).toBe(true);
    }
  });

  it("the panel that is cut out, or else the part that most lie on, is marked, once", () => {
    const [panel, ...more] = within(view, "panel");
    const cut = plan.steps.find(({ verb }) => verb === "cut-out");
    const name = plan.brief.parts[cut?.part ?? "carpet"] ?? "";
    expect(panel && textContent(panel)).toContain(name);
    expect(more).toEqual([]);
  });

  it("what is reached from below hangs below the panel, and nearer to it what others hide", () => {
    const text = textContent(view).replaceAll(/\s+/g, " ");
    const [panel] = within(view, "panel");
    const bar = text.indexOf(panel ? textContent(panel) : "no panel");
    const at = ({ n }: Step): number => text.search(new RegExp(`\\b${n}/`));
    const below = partsOf(plan).filter(({ zone }) => zone === "under");
    for (const part of below) {
      expect(at(part), part.id).toBeGreaterThan(bar);
      for (const other of below) if (hides(part, other)) expect(at(other)).toBeLessThan(at(part));
    }
  });

  it("the drawing is a figure that says in words what lies on what", () => {
    const { value } = layout(fill(layers, inputOf(plan), words), css, "a4");
    const figures = value ? tagsOf(value.tree).filter(({ type }) => type === "Figure") : [];
    expect(figures).toHaveLength(1);
    const alt = figures[0]?.alt ?? "";
    for (const { n } of partsOf(plan)) expect(alt).toMatch(new RegExp(` ${n}/\\d`));
    expect(alt).toMatch(/carpet \d+\/\d+: under [^.]*belt buckle/);
  });

  it.each(["a4", "letter"] as const)("it is one page of %s, in large type too", (paper) => {
    for (const large of [false, true]) {
      const html = fill(layers, { ...inputOf(plan), large }, words);
      const { value } = layout(html, css, paper);
      expect(value?.pages).toHaveLength(1);
      const [page] = value?.pages ?? [];
      const right = (value?.width ?? 0) - 14;
      expect(page?.items.filter((item) => rightOf(item) > right)).toEqual([]);
    }
  });
});

function tagsOf(tag: Tag): Tag[] {
  const inner = tag.children.filter((child): child is Tag => !isContent(child));
  return [tag, ...inner.flatMap(tagsOf)];
}

function isContent(child: Tag | Content): child is Content {
  return "of" in child;
}

function rightOf(item: Item): number {
  return item.is === "fill" ? item.x + item.w : item.x;
}
