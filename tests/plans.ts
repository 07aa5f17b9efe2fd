import { parse } from "../src/read/parse.js";
import { type Ask, type Opened, type PlanFile, open, plan, planFrom } from "../src/index.js";

/** The small invented library of the tests. */
export const small = "tests/fixtures/small";

/** Plans a job of a library and returns plan and diagnostics. */
export function planned(ask: Partial<Ask> & { job: string }, library = small) {
  const opened = open(library);
  if (!opened.value) throw new Error("the library cannot be read");
  return { opened: opened.value, ...plan(opened.value, { fitted: {}, ...ask }) };
}

/** What the prover says of a plan file in which these steps stand instead. */
export function judged(opened: Opened, file: PlanFile | undefined, steps: PlanFile["steps"]) {
  const { value, diagnostics } = parse("plan.json", JSON.stringify({ ...file, steps }));
  return value ? planFrom(opened, value) : { diagnostics };
}

/** The plan of a job that must prove. */
export function proven(ask: Partial<Ask> & { job: string }, library = small): PlanFile {
  const { value, diagnostics } = planned(ask, library);
  if (!value || diagnostics.length > 0)
    throw new Error(diagnostics.map((d) => d.message).join("\n"));
  return value;
}
