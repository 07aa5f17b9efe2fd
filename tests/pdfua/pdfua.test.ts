import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { PlanFile } from "../../src/index.js";
import { has } from "../pdf.js";
import { catalog, readPdf } from "./objects.js";
import { bookmarksOf, ownRules } from "./own.js";
import { planOf, printPack, repairPacks, smallPacks } from "./packs.js";
import { readerOf } from "./read.js";
import { allRules, cannotOccur, checked, judge, notChecked } from "./register.js";
import type { Subject } from "./rules/rule.js";
import { subjectOf } from "./subject.js";

describe("the rules of PDF/UA-1", () => {
  it("are each checked, or cannot occur, or are named as not checked", () => {
    const told = [
      ...Object.keys(checked),
      ...cannotOccur.flatMap(({ rules }) => rules),
      ...Object.keys(notChecked),
    ];
    expect(allRules).toHaveLength(106);
    expect(told.toSorted()).toEqual(allRules.toSorted());
  });
});

const judged = [
  ...smallPacks,
  ...repairPacks.filter(({ name }) => /section, a4|member, large/.test(name)),
];

describe.runIf(has("qpdf")).each(judged)("the pack of $name", (pack) => {
  const sheets: { name: string; subject: Subject }[] = [];
  let plan: PlanFile | undefined;
  beforeAll(async () => {
    plan = planOf(pack).value;
    for (const { name, bytes } of await printPack(pack))
      sheets.push({ name, subject: subjectOf(readPdf(bytes)) });
  }, 120_000);
  afterAll(() => void sheets.splice(0));
  const named = (kind: string): Subject => {
    const sheet = sheets.find(({ name }) => name.endsWith(`-${kind}.pdf`));
    if (!sheet) throw new Error(`no ${kind}`);
    return sheet.subject;
  };
  const against = (found: (subject: Subject) => string[]): string[] =>
    sheets.flatMap(({ name, subject }) => found(subject).map((one) => `${name}: ${one}`));

  it("breaks no rule of the standard that is tested", () => {
    expect(sheets.length).toBeGreaterThan(2);
    expect(against(judge)).toEqual([]);
  });

  it.each(Object.entries(ownRules))("%s", (_, check) => {
    expect(against(check)).toEqual([]);
  });

  it("reads the steps of the checklist in the order of the plan", () => {
    const { elements } = named("checklist");
    const read = readerOf(named("checklist"));
    const numbers = elements
      .filter(({ type }) => type === "P")
      .flatMap((one) => stepNumber(read(one), one.parent?.type === "LBody") ?? []);
    expect(numbers.length).toBeGreaterThan(10);
    expect(numbers).toEqual(plan?.steps.map(({ n }) => n));
  });

  it("has a bookmark for each heading, in the order of reading", () => {
    for (const { name, subject } of sheets.filter((one) => !one.name.endsWith("-pack.pdf"))) {
      const read = readerOf(subject);
      const headings = subject.elements.filter(({ type }) => /^H[1-4]$/.test(type)).map(read);
      const { pdf } = subject;
      const titles = bookmarksOf(pdf, catalog(pdf)["/Outlines"]).map(({ title }) => title);
      expect(titles, name).toEqual(headings);
    }
  });
});

/** The number of the step that a paragraph opens: alone, with a hold's words, or at a pause. */
function stepNumber(text: string, inStep: boolean): string | undefined {
  const found = /^([\d.]+)(?: ·|$)|^Pause point \w+ · step ([\d.]+)\./.exec(text);
  const alone = found?.[1] === text;
  return alone && !inStep ? undefined : (found?.[1] ?? found?.[2]);
}
