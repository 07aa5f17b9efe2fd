import { beforeAll, describe, expect, it } from "vitest";
import { has } from "../pdf.js";
import { readPdf } from "./objects.js";
import { packs, printPack } from "./packs.js";
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

describe.runIf(has("qpdf")).each(packs)("the pack of $name", (pack) => {
  const sheets: { name: string; subject: Subject }[] = [];
  beforeAll(async () => {
    for (const { name, bytes } of await printPack(pack))
      sheets.push({ name, subject: subjectOf(readPdf(bytes)) });
  });

  it("breaks no rule that is tested", () => {
    expect(sheets.length).toBeGreaterThan(2);
    const found = sheets.flatMap(({ name, subject }) =>
      judge(subject).map((finding) => `${name}: ${finding}`),
    );
    expect(found).toEqual([]);
  });
});
