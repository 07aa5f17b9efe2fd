import { beforeAll, describe, expect, it } from "vitest";
import { has } from "../pdf.js";
import { annotate, add, copyOf, first, fontDicts, paint, some } from "./break.js";
import { type Breaks, breaks } from "./breaks.js";
import { type Pdf, catalog, dict, list, pagesOf, readPdf } from "./objects.js";
import { ownRules } from "./own.js";
import { printPack, smallPacks } from "./packs.js";
import { cannotOccur, checked } from "./register.js";
import type { Subject } from "./rules/rule.js";
import { rootOf } from "./structure.js";
import { subjectOf } from "./subject.js";

/** What makes a rule's object occur that was thought not to. */
const occurring: Breaks = {
  "no layers": (pdf) => void (catalog(pdf)["/OCProperties"] = {}),
  "no form that is rendered by a program in the file (XFA)": (pdf) =>
    void (catalog(pdf)["/AcroForm"] = { "/XFA": [] }),
  "no trap nets, media or printer's marks": (pdf) => annotate(pdf, { "/Subtype": "/Movie" }),
  "no reference to a page of another file": (pdf) =>
    void add(pdf, { "/Subtype": "/Form", "/Ref": {} }),
  "no CMap but Identity-H": (pdf) =>
    fontDicts(pdf).forEach((one) => (one["/Encoding"] = "/UniGB-UTF16-H")),
  "no simple fonts: every font is a Type 0 font": (pdf) =>
    fontDicts(pdf).forEach((one) => (one["/Subtype"] = "/TrueType")),
};

const ownBreaks: Breaks = {
  "marks are balanced on every page": (pdf) => paint(pdf, "EMC"),
  "the parent tree leads from each mark back to its element": (pdf) => {
    const [, marks] = list(pdf, dict(pdf, rootOf(pdf)["/ParentTree"])["/Nums"]);
    list(pdf, marks).reverse();
  },
  "each mark of a page hangs on one element": (pdf) => {
    const [one, other] = some(pdf, "P");
    if (one && other) one.dict["/K"] = other.dict["/K"] ?? null;
  },
  "each page has a number of its own in the parent tree": (pdf) =>
    pagesOf(pdf).forEach((page) => (page.dict["/StructParents"] = 0)),
  "fields are reached in the order of the tags": (pdf) => {
    const [page] = pagesOf(pdf);
    if (page) page.dict["/Tabs"] = "/R";
  },
  "a printed field says what it is (Matterhorn 24-001)": (pdf) => {
    first(pdf, "Form").dict["/A"] = { "/O": "/PrintField", "/Role": "/pb" };
  },
  "every field has a spoken name": (pdf) => void (first(pdf, "Form").dict["/Alt"] = "u: "),
  "no two fields of a sheet have the same name": (pdf) =>
    some(pdf, "Form").forEach((one) => (one.dict["/Alt"] = "u:time")),
  "no alternative is empty": (pdf) => void (first(pdf, "Form").dict["/Alt"] = "u:"),
  "every bookmark has a title and leads to a page": (pdf) => void (catalog(pdf)["/Outlines"] = {}),
};

describe.runIf(has("qpdf"))("each check can fail", () => {
  const good: { pdf?: Pdf; subject?: Subject } = {};
  beforeAll(async () => {
    const [pack] = smallPacks;
    const sheets = pack ? await printPack(pack) : [];
    const sheet = sheets.find(({ name }) => name.endsWith("checklist.pdf"));
    if (!sheet) throw new Error("nothing to break");
    good.pdf = readPdf(sheet.bytes);
    good.subject = subjectOf(readPdf(sheet.bytes));
  });
  const whole = (): Subject => {
    if (!good.subject) throw new Error("nothing to break");
    return good.subject;
  };
  const brokenBy = (how: ((pdf: Pdf) => void) | undefined) => {
    if (!good.pdf || !how) throw new Error("nothing to break");
    const pdf = copyOf(good.pdf);
    how(pdf);
    return subjectOf(pdf);
  };

  it("there is a way to break every rule", () => {
    expect(Object.keys(breaks).toSorted()).toEqual(Object.keys(checked).toSorted());
    expect(Object.keys(occurring)).toEqual(cannotOccur.map(({ why }) => why));
    expect(Object.keys(ownBreaks)).toEqual(Object.keys(ownRules));
  });

  it.each(Object.entries(checked))("rule %s", (rule, check) => {
    expect(check(whole())).toEqual([]);
    expect(check(brokenBy(breaks[rule])).length).toBeGreaterThan(0);
  });

  it.each(cannotOccur)("$why", ({ why, found }) => {
    expect(found(brokenBy(occurring[why])).length).toBeGreaterThan(0);
  });

  it.each(Object.entries(ownRules))("%s", (rule, check) => {
    expect(check(whole())).toEqual([]);
    expect(check(brokenBy(ownBreaks[rule])).length).toBeGreaterThan(0);
  });
});
