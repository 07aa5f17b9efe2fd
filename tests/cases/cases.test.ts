import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { codes } from "../../src/diagnostics/codes.js";
import { type Diagnostic } from "../../src/diagnostics/diagnostic.js";
import { hasErrors, lineColumn } from "../../src/diagnostics/print.js";
import { open, plan } from "../../src/index.js";
import { type Case, cases, laidOut } from "./read-case.js";

/** The codes that need another kind of input than a library, and the test that brings them about. */
const elsewhere: Record<string, string> = {
  "outside-library": "tests/read/read.test.ts",
  "one-use": "tests/cases/plan-files.test.ts",
  holds: "tests/cases/plan-files.test.ts",
  "too-long": "tests/commands/labels.test.ts",
  "no-plan": "tests/paint/pack.test.ts",
  "done-already": "tests/commands/found.test.ts",
  "stale-plan": "tests/cases/plan-files.test.ts",
  "missing-glyph": "tests/cases/sheets.test.ts",
  "bad-style": "tests/cases/sheets.test.ts",
};

const all = cases();

it.each(all)("$name", (one) => {
  const found = diagnosticsOf(one);
  expect(found.map((d) => `${d.code} ${d.place}`).sort()).toEqual(
    one.expected.map((e) => `${e.code} ${e.place}`).sort(),
  );
  for (const wanted of one.expected) {
    const hit = found.find(
      (d) => d.code === wanted.code && d.place === wanted.place && d.message.includes(wanted.words),
    );
    expect(hit?.message, wanted.words).toContain(wanted.words);
    for (const hint of wanted.hints) expect(hit?.hints.join("\n")).toContain(hint);
  }
});

it("every case expects something", () => {
  expect(all.filter((one) => one.expected.length === 0).map((one) => one.name)).toEqual([]);
});

it("every code has a case, or a test elsewhere", () => {
  const shown = new Set(all.flatMap((one) => one.expected.map((e) => e.code)));
  const known = [...shown, ...Object.keys(elsewhere)];
  expect(Object.keys(codes).filter((code) => !known.includes(code))).toEqual([]);
  expect(Object.keys(elsewhere).filter((code) => shown.has(code))).toEqual([]);
});

it.each(Object.entries(elsewhere))("%s stands in %s", (code, file) => {
  expect(readFileSync(file, "utf8")).toContain(code);
});

function diagnosticsOf(one: Case): (Diagnostic & { place: string })[] {
  return laidOut(one, (folder) => {
    const opened = open(folder);
    const { value } = opened;
    const stop = value === undefined || hasErrors(opened.diagnostics) || one.job === undefined;
    const planned = stop ? [] : plan(value, { job: one.job ?? "", fitted: one.fitted }).diagnostics;
    const textOf = (file: string): string =>
      [...one.files, ...(value?.sources ?? []).map((s) => ({ path: s.file, text: s.text }))].find(
        ({ path }) => file === path || file === `${folder}/${path}`,
      )?.text ?? "";
    return [...opened.diagnostics, ...planned].map((d) => ({
      ...d,
      place: placeOf(d, folder, textOf),
    }));
  });
}

function placeOf({ span }: Diagnostic, folder: string, textOf: (file: string) => string): string {
  if (span === undefined) return "-";
  const { line, column } = lineColumn(textOf(span.file), span.start);
  return `${span.file.replace(`${folder}/`, "")}:${line}:${column}`;
}
