// Makes the demo pack in out/ and says what it wrote.
import { mkdirSync, writeFileSync } from "node:fs";
import { open, plan } from "../../dist/index.js";

mkdirSync("out", { recursive: true });
const opened = open("tests/fixtures/small");
const { value, diagnostics } = plan(opened.value, { job: "floor-paint", fitted: {} });
if (diagnostics.length > 0) throw new Error(JSON.stringify(diagnostics));
writeFileSync("out/plan.json", JSON.stringify(value, null, 2));
console.log(`wrote out/plan.json (${value.steps.length} steps)`);
