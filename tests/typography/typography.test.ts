import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { has } from "../pdf.js";
import { readPdf } from "../pdfua/objects.js";
import { printPack, repairPacks } from "../pdfua/packs.js";
import { subjectOf } from "../pdfua/subject.js";
import { breaks, copyOf } from "./breaks.js";
import { rules } from "./rules.js";
import { type Sheet, against, sheetOf } from "./sheet.js";

const measured = new Set<string>();

describe.runIf(has("qpdf")).each(repairPacks)("the pack of $name", (pack) => {
  const printed: { sheet?: Sheet } = {};
  beforeAll(async () => {
    const all = (await printPack(pack)).at(-1);
    if (all) printed.sheet = sheetOf(subjectOf(readPdf(all.bytes)), pack.options.large ?? false);
  }, 120_000);
  const sheet = (): Sheet => {
    if (!printed.sheet) throw new Error("nothing printed");
    return printed.sheet;
  };

  afterAll(() => void delete printed.sheet);

  it.each(rules)("$name", (rule) => {
    if (!measured.has(rule.name) && rule.measure(sheet()).length > 0) measured.add(rule.name);
    expect(against(rule, sheet())).toEqual([]);
  });

  it.runIf(pack === repairPacks.at(-1))(
    "each rule can be broken",
    () => {
      expect(Object.keys(breaks).toSorted()).toEqual(rules.map(({ name }) => name).toSorted());
      const blind = rules.filter((rule) => {
        const broken = copyOf(sheet());
        breaks[rule.name]?.(broken);
        return against(rule, broken).length === 0;
      });
      expect(blind.map(({ name }) => name)).toEqual([]);
    },
    60_000,
  );
});

afterAll(() => {
  if (has("qpdf"))
    expect([...measured].toSorted()).toEqual(rules.map(({ name }) => name).toSorted());
});
