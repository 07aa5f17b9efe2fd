import { planned, takenWords } from "./ask.js";
import type { CommonOptions } from "./options.js";
import { report, say, sayJson, textsOf } from "./report.js";

/** `countback plan JOB`: prints the steps of a proven plan, or the whole plan as JSON. */
export function planCommand(job: string, options: CommonOptions): number {
  const { value, diagnostics, sources } = planned(job, options);
  if (value && options.json) sayJson(value);
  else if (value) {
    const lines = value.steps.map(
      ({ n, phase, says }) => `${n.padStart(5)}  ${phase.padEnd(7)}  ${says}`,
    );
    process.stdout.write(`${lines.join("\n")}\n`);
  }
  const taken = value ? takenWords(value) : "";
  if (taken !== "") say(taken, options);
  return report(diagnostics, textsOf(sources), options);
}
