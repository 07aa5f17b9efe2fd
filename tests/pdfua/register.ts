import { readFileSync } from "node:fs";
import { catalog, dict } from "./objects.js";
import { contentRules } from "./rules/content.js";
import { annotations, fieldRules } from "./rules/fields.js";
import { fileRules } from "./rules/file.js";
import { fontRules, otherRules } from "./rules/fonts.js";
import { nestingRules } from "./rules/nesting.js";
import { type Rules, type Subject, unless } from "./rules/rule.js";
import { tableRules } from "./rules/tables.js";
import { treeRules } from "./rules/tree.js";

/** The rules that a function here decides. */
export const checked: Rules = {
  ...fileRules,
  ...contentRules,
  ...treeRules,
  ...nestingRules,
  ...tableRules,
  ...fieldRules,
  ...fontRules,
  ...otherRules,
};

/** Why rules cannot occur, and what would be found if they could after all. */
interface Absence {
  rules: string[];
  why: string;
  found(subject: Subject): string[];
}

/** Rules whose object a sheet never holds; that it does not is asked of every sheet. */
export const cannotOccur: readonly Absence[] = [
  {
    rules: ["7.10-1", "7.10-2"],
    why: "no layers",
    found: ({ catalog: root }) => unless(root["/OCProperties"] === undefined, "layers"),
  },
  {
    rules: ["7.15-1"],
    why: "no form that is rendered by a program in the file (XFA)",
    found: ({ pdf }) =>
      unless(dict(pdf, catalog(pdf)["/AcroForm"])["/XFA"] === undefined, "an XFA form"),
  },
  {
    rules: ["7.18.2-1", "7.18.6.2-1", "7.18.6.2-2", "7.18.8-1"],
    why: "no trap nets, media or printer's marks",
    found: (subject) =>
      annotations(subject)
        .map((one) => String(one["/Subtype"]))
        .filter((subtype) => !["/Widget", "/Link"].includes(subtype)),
  },
  {
    rules: ["7.20-1"],
    why: "no reference to a page of another file",
    found: ({ dicts }) =>
      unless(!dicts.some((one) => one["/Subtype"] === "/Form" && one["/Ref"]), "a reference"),
  },
  {
    rules: ["7.21.3.3-1", "7.21.3.3-2", "7.21.3.3-3"],
    why: "no CMap but Identity-H",
    found: ({ fonts }) =>
      [...fonts.values()]
        .map((font) => String(font.dict["/Encoding"]))
        .filter((name) => name !== "/Identity-H"),
  },
  {
    rules: ["7.21.4.2-1", "7.21.6-1", "7.21.6-2", "7.21.6-3", "7.21.6-4"],
    why: "no simple fonts: every font is a Type 0 font",
    found: ({ fonts }) =>
      [...fonts.values()]
        .map((font) => String(font.dict["/Subtype"]))
        .filter((subtype) => subtype !== "/Type0"),
  },
];

/** Rules that are not checked, and why. */
export const notChecked: Record<string, string> = {};

/** The rules as data: clause and number, in the order of the table. */
export const allRules: readonly string[] = readFileSync(
  new URL("rules.tsv", import.meta.url),
  "utf8",
)
  .split("\n")
  .filter((line) => /^\d/.test(line))
  .map((line) => line.split("\t").slice(0, 2).join("-"));

/** All that is against one PDF, each finding under its rule. */
export function judge(subject: Subject): string[] {
  return [
    ...Object.entries(checked).flatMap(([rule, check]) =>
      check(subject).map((finding) => `${rule} ${finding}`),
    ),
    ...cannotOccur.flatMap(({ rules, found }) =>
      found(subject).map((finding) => `${rules[0]} was thought not to occur: ${finding}`),
    ),
  ];
}
