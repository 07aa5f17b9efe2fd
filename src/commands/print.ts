import { hasErrors } from "../diagnostics/print.js";
import type { PlanFile } from "../model/plan-file.js";
import type { PrintOptions } from "../model/printing.js";
import { print, sheetNames } from "../pipeline.js";
import { planned, takenWords } from "./ask.js";
import { labelPaper } from "./label-paper.js";
import { type CommonOptions, WrongUse } from "./options.js";
import { report, say, sayJson, textsOf } from "./report.js";
import { mustBeFolder, writeAll } from "./write.js";

/** What `print` takes beside the common options. */
export interface PrintCommandOptions extends CommonOptions, Pick<PrintOptions, "paper" | "units"> {
  out: string;
  large?: boolean;
  draft?: boolean;
  html?: boolean;
  fillable?: boolean;
  strict?: boolean;
  sheets?: string;
  labels?: string;
}

/** `countback print JOB`: writes the sheets of a proven plan; without a proof it writes drafts only. */
export async function printCommand(job: string, options: PrintCommandOptions): Promise<number> {
  const sheets = sheetsOf(options.sheets);
  const labels =
    options.labels === undefined ? {} : { labels: labelPaper(options.labels, options.paper) };
  mustBeFolder(options.out);
  const { opened, value, diagnostics, sources } = planned(job, options);
  const textOf = textsOf(sources);
  const failed = report(diagnostics, textOf, options);
  if (!opened || !value || (failed && !options.draft)) return 1;
  const {
    paper,
    units = "metric",
    large = false,
    draft = false,
    html = false,
    fillable = false,
  } = options;
  const printed = await print(opened, value, {
    paper,
    large,
    draft,
    html,
    fillable,
    units,
    ...labels,
    ...sheets,
  });
  const unprintable = report(printed.diagnostics, textOf, options);
  if (!printed.value || hasErrors(printed.diagnostics)) return unprintable;
  tell(value, writeAll(options.out, printed.value), options);
  return failed;
}

/** The sheets that the command line names. */
function sheetsOf(wanted: string | undefined): { sheets?: string[] } {
  if (wanted === undefined) return {};
  const names = wanted.split(",");
  const unknown = names.find((name) => !sheetNames.includes(name));
  if (unknown !== undefined)
    throw new WrongUse(`there is no sheet '${unknown}'; sheets: ${sheetNames.join(", ")}`);
  return { sheets: names };
}

/** Names the files written, and says what was taken for granted. */
function tell(plan: PlanFile, files: readonly string[], options: PrintCommandOptions): void {
  if (options.json) sayJson(files);
  else process.stdout.write(files.map((file) => `${file}\n`).join(""));
  const taken = takenWords(plan);
  if (taken !== "") say(taken, options);
}
