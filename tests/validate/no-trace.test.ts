import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, it } from "vitest";
import { codes } from "../../src/diagnostics/codes.js";
import { format } from "../../src/diagnostics/print.js";
import { open, plan } from "../../src/index.js";
import { laidOut } from "../cases/read-case.js";
import { small } from "../plans.js";

const files = readdirSync(small, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".yaml"))
  .sort()
  .map((path) => ({ path, text: readFileSync(join(small, path), "utf8") }));

const jobs = ["floor-paint", "carpet", "seat-powered"];
const scraps = [":", "- ", "{", "}", "[", "]", '"', "&a ", "*a", "\n", "  ", "0", "null", "~"];
const names = ["constructor", "__proto__", "toString", "seat", "left", "@", "%", "\u0000", "Ω"];

interface Edit {
  file: number;
  at: number;
  cut: number;
  put: string;
}

const edit: fc.Arbitrary<Edit> = fc.record({
  file: fc.nat(files.length - 1),
  at: fc.nat(),
  cut: fc.nat(12),
  put: fc.constantFrom("", ...scraps, ...names),
});
const edits = fc.array(edit, { minLength: 1, maxLength: 4 });

/** The small library with the edits made; an edit's place wraps round at the end of its file. */
const mangled = (wanted: readonly Edit[]) =>
  files.map(({ path, text }, i) => ({
    path,
    text: wanted
      .filter(({ file }) => file === i)
      .reduce((now, { at, cut, put }) => {
        const start = at % (now.length + 1);
        return now.slice(0, start) + put + now.slice(start + cut);
      }, text),
  }));

it("no library, however mangled, ends in a stack trace", () => {
  let refused = 0;
  fc.assert(
    fc.property(edits, (wanted) =>
      laidOut({ files: mangled(wanted), without: [] }, (folder) => {
        const { value, diagnostics } = open(folder);
        const planned = value ? jobs.flatMap((job) => plan(value, { job, fitted: {} })) : [];
        const found = [...diagnostics, ...planned.flatMap((one) => one.diagnostics)];
        for (const one of found) {
          expect(one.code in codes).toBe(true);
          expect(format(one, () => "text")).toContain(one.message);
        }
        refused += found.length > 0 ? 1 : 0;
      }),
    ),
    { numRuns: 300, seed: 20 },
  );
  expect(refused).toBeGreaterThan(150);
});
