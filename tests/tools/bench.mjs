// Times the whole command for the demo job, as a user meets it: `npm run bench`.
import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const out = mkdtempSync(join(tmpdir(), "countback-bench-"));
const car = "recipes/cars/quillet-0482.yaml";
const commands = {
  print: ["print", "seat-crossmember", "--car", car, "--out", out, "--quiet"],
  plan: ["plan", "seat-crossmember", "--car", car, "--json", "--quiet"],
  check: ["check", "--quiet"],
};

for (const [name, args] of Object.entries(commands)) {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    execFileSync(process.execPath, ["dist/cli.js", ...args], { stdio: "ignore" });
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const [least, median, most] = [times[0], times[2], times[4]].map((ms) => Math.round(ms));
  console.log(`${name.padEnd(6)} median ${median} ms of 5 runs, ${least} to ${most} ms`);
}
