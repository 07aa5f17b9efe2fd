import { expect, it } from "vitest";
import { sheets } from "../../src/fill/sheets.js";
import { fill } from "../../src/fill/fill.js";
import { inputOf, repairs, seen } from "./filled.js";

it.each(repairs)(
  "the guide to the pack of $name has a row for each sheet of it, and for no other",
  ({ opened, plan }) => {
    const guide = sheets.find(({ name }) => name === "guide");
    if (!guide) throw new Error("there is no guide");
    const input = inputOf(plan);
    const others = sheets.filter((sheet) => sheet.applies(input) && sheet !== guide);
    const rowsOf = (printed: readonly string[]): string[] =>
      fill(guide, { ...input, printed }, opened.words)
        .split("</table>")[0]
        ?.split("<tr>")
        .slice(1)
        .map((row) => seen(row).trim()) ?? [];
    const heading = 1;
    const names = others.map(({ name }) => name);
    expect(new Set(rowsOf(names)).size).toBe(others.length + heading);
    for (const name of names) expect(rowsOf([name])).toHaveLength(1 + heading);
    expect(rowsOf(["checklist"]).at(-1)).toContain("It is the record");
  },
);
