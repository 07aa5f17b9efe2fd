// Writes the demo pack to out/ with the program's own commands, and says what it wrote.
import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";

mkdirSync("out", { recursive: true });
const countback = (...args) =>
  execFileSync(process.execPath, ["dist/cli.js", ...args], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
    maxBuffer: 1 << 27,
  });
const print = (...args) =>
  process.stdout.write(countback("print", ...args, "--out", "out", "--quiet"));
const car = (name) => ["--car", `recipes/cars/${name}.yaml`];

print("seat-crossmember", ...car("quillet-0482"));
print("seat-crossmember", ...car("quillet-0917"), "--paper", "letter");
print("floor-pan-section", ...car("quillet-1355"));
print("carpet", "--large");
print("carpet", "--html");

const plan = "out/quillet-0482-seat-crossmember-plan.json";
writeFileSync(
  plan,
  countback("plan", "seat-crossmember", ...car("quillet-0482"), "--json", "--quiet"),
);
process.stdout.write(`${plan}\n`);
