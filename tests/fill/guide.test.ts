import { expect, it } from "vitest";
import { sheets } from "../../src/fill/sheets.js";
import { fill } from "../../src/fill/fill.js";
import { jobsOf, opened as openedAt, own, planned } from "../plans.js";
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

/** A job that strips a part only, with no welding in it. */
const strip = jobsOf(openedAt(own)).find(({ name }) => name.startsWith("carpet on"));

/** The titles by which the guide names sheets. */
const titled: Record<string, string> = {
  "Hazard sheet": "hazards",
  Checklist: "checklist",
  "Gather list": "gather",
  "Handover note": "handover",
  "Count sheet": "count",
  Measurements: "measurements",
  "Weld sheet": "welds",
  Apprentice: "apprentice",
};

const stripped = strip && planned(strip.ask, own);
const jobs = [
  ...repairs,
  ...(strip && stripped?.value
    ? [{ name: strip.name, opened: stripped.opened, plan: stripped.value }]
    : []),
];

it.each(jobs)(
  "the guide to $name sends nobody to words that the sheet it names does not have",
  ({ opened, plan }) => {
    const input = inputOf(plan);
    const mine = sheets.filter((sheet) => sheet.applies(input));
    const printed = mine.map(({ name }) => name);
    const pages = new Map(
      mine.map((sheet) => [sheet.name, fill(sheet, { ...input, printed }, opened.words)]),
    );
    const [, table = ""] =
      /<h2>When something.*?<tbody>(.*?)<\/tbody>/s.exec(pages.get("guide") ?? "") ?? [];
    const sent = table.split("<b>").slice(1);
    expect(sent.length).toBeGreaterThan(10);
    for (const place of sent) {
      const sheet = pages.get(titled[place.split("</b>")[0] ?? ""] ?? "");
      expect(sheet, place).toBeDefined();
      for (const [, words = ""] of place.matchAll(/“([^”]+)”/g))
        expect(seen(sheet ?? ""), place).toContain(words);
    }
  },
);

it("the packs of which the guide is read are repairs and a part to strip", () => {
  expect(jobs).toHaveLength(repairs.length + 1);
});
