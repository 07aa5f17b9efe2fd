import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, it } from "vitest";
import { codes } from "../../src/diagnostics/codes.js";
import { format } from "../../src/diagnostics/print.js";
import { open, plan } from "../../src/index.js";
import { laidOut } from "../cases/read-case.js";
import { small } from "../plans.js";
import { mangles } from "./mangle.js";

const files = readdirSync(small, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".yaml"))
  .sort()
  .map((path) => ({ path, text: readFileSync(join(small, path), "utf8") }));

const jobs = ["floor-paint", "bar", "seat-powered"];

const runs = 300;
it("no library, however mangled, ends in a stack trace", { timeout: 600_000 }, () => {
  let refused = 0;
  fc.assert(
    fc.property(mangles, (mangle) =>
      laidOut({ files: mangle(files), without: [] }, (folder) => {
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
    { numRuns: runs, seed: 20 },
  );
  expect(refused).toBeGreaterThan(runs / 2);
});
