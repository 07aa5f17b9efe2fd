import { beforeAll, describe, expect, it } from "vitest";
import { has } from "../pdf.js";
import { readPdf } from "../pdfua/objects.js";
import { printPack, repairPacks } from "../pdfua/packs.js";
import { subjectOf } from "../pdfua/subject.js";
import { rules } from "./rules.js";
import { type Sheet, against, sheetOf } from "./sheet.js";

describe.runIf(has("qpdf")).each(repairPacks)("the pack of $name", (pack) => {
  const printed: { sheet?: Sheet } = {};
  beforeAll(async () => {
    const all = (await printPack(pack)).at(-1);
    if (all) printed.sheet = sheetOf(subjectOf(readPdf(all.bytes)), pack.options.large ?? false);
  }, 120_000);

  it.each(rules)("$name", (rule) => {
    if (!printed.sheet) throw new Error("nothing printed");
    expect(against(rule, printed.sheet)).toEqual([]);
  });
});
