import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Outcome } from "../diagnostics/diagnostic.js";
import { hasErrors } from "../diagnostics/print.js";
import { stepInInches } from "../figures/in-units.js";
import { fill } from "../fill/fill.js";
import { page } from "../fill/page.js";
import type { Laid, Sheet, SheetInput } from "../fill/sheet.js";
import { sheets } from "../fill/sheets.js";
import { recipesFor } from "../find/find-job.js";
import { fontFile } from "../layout/fonts.js";
import { layout } from "../layout/layout.js";
import type { LaidSheet } from "../model/page.js";
import type { Opened, PlanFile } from "../model/plan-file.js";
import { type PrintOptions, type Printed, papers } from "../model/printing.js";
import { type Words, fillIn } from "../model/words.js";
import type { Attachment } from "../paint/attach.js";
import { paint } from "../paint/paint.js";
import { rate } from "../rate/rate.js";
import { digestOf, jsonOf } from "./digest.js";

/** Prints a plan's sheets, and all of them joined; a plan that does not prove prints as a draft only. */
export async function print(
  opened: Opened,
  file: PlanFile,
  options: PrintOptions,
): Promise<Outcome<Printed[]>> {
  const alone = inputOf(file, options, opened.words);
  const wanted = sheets.filter(
    (sheet) => (options.sheets?.includes(sheet.name) ?? true) && sheet.applies(alone),
  );
  const input = { ...alone, printed: wanted.map(({ name }) => name) };
  const nameOf = (sheet: string): string =>
    [file.car.id, file.job.split("/").at(-1), sheet].filter(Boolean).join("-");
  const htmlOf = (sheet: Sheet, known: SheetInput["laid"]): string =>
    fill(sheet, { ...input, laid: known }, opened.words);
  const css = styleText();
  if (options.html) {
    const value = wanted.map((one) => browserPage(nameOf(one.name), htmlOf(one, {}), css.text));
    return { value, diagnostics: [] };
  }
  const known: Record<string, Laid> = {};
  const laid: { name: string; sheet: LaidSheet }[] = [];
  for (const one of wanted.toSorted((a, b) => (a.comesLast ? 1 : 0) - (b.comesLast ? 1 : 0))) {
    const { value: sheet, diagnostics } = layout(htmlOf(one, known), css, options.paper);
    if (!sheet || hasErrors(diagnostics)) return { diagnostics };
    known[one.name] = placesOf(sheet);
    laid[wanted.indexOf(one)] = { name: nameOf(one.name), sheet };
  }
  const common = {
    revision: input.revision,
    fillable: options.fillable ?? false,
    fontFile,
    attachments: attachmentsOf(opened, file),
  };
  const printed: Printed[] = [];
  for (const { name, sheet } of laid) {
    const bytes = await paint([sheet], { ...common, title: sheet.title });
    printed.push({ name: `${name}.pdf`, bytes });
  }
  if (laid.length > 1) {
    const title = fillIn(opened.words.phrases["pack"] ?? "", { job: file.brief.title });
    const all = laid.map(({ sheet }) => sheet);
    const bytes = await paint(all, { ...common, title });
    printed.push({ name: `${nameOf("pack")}.pdf`, bytes });
  }
  return { value: printed, diagnostics: [] };
}

function placesOf({ pages }: LaidSheet): Laid {
  const headings = pages.flatMap((one, i) =>
    one.headings.map(({ level, text }) => ({ level, text, page: i + 1 })),
  );
  return { pages: pages.length, headings };
}

function browserPage(name: string, html: string, css: string): Printed {
  return { name: `${name}.html`, bytes: Buffer.from(page(html, css, name)) };
}

/** What every file carries: the plan, and every recipe that it was made from. */
function attachmentsOf(opened: Opened, file: PlanFile): Attachment[] {
  const { phrases } = opened.words;
  const used = new Set(file.brief.tasks.map((task) => task.recipe));
  const sources = opened.library.ranges
    .filter((range) => range.data.range === file.range)
    .flatMap((range) => [
      range.source,
      ...recipesFor(opened.library, range)
        .filter((one) => used.has(one.data.recipe))
        .map((one) => one.source),
    ]);
  const json = jsonOf(file);
  return [
    {
      name: "plan.json",
      about: phrases["plan-inside"] ?? "",
      type: "application/json",
      relation: "Data",
      bytes: Buffer.from(json),
    },
    ...sources.map(({ file: path, text }, i): Attachment => ({
      name: `${String(i + 1).padStart(2, "0")}-${path.split("/").at(-1) ?? ""}`,
      about: phrases["recipe-inside"] ?? "",
      type: "application/yaml",
      relation: "Source",
      bytes: Buffer.from(text),
    })),
  ];
}

/** The names of all sheets. */
export const sheetNames: readonly string[] = sheets.map((sheet) => sheet.name);

function inputOf(file: PlanFile, options: PrintOptions, words: Words): SheetInput {
  const { draft, large, units, labels, paper } = options;
  const { count, brief, car } = file;
  const steps = units === "inch" ? file.steps.map((step) => stepInInches(step, words)) : file.steps;
  const revision = digestOf([file.job, car, steps, count]);
  return {
    job: file.job,
    steps,
    count,
    brief,
    car,
    revision: `${revision.slice(0, 4)} ${revision.slice(4)}`,
    findings: file.proof.laws.flatMap((law) => law.findings),
    ratings: rate(steps),
    draft: draft || !isProven(file),
    large,
    printed: [],
    laid: {},
    ...(labels ? { labelPaper: { ...labels, paperHeight: papers[paper].height } } : {}),
    ...(file.resume ? { resume: file.resume } : {}),
  };
}

/** Whether every law holds. */
export function isProven({ proof }: PlanFile): boolean {
  return proof.laws.every(({ held }) => held);
}

function styleText(): { text: string; file: string } {
  const file = fileURLToPath(new URL("../../templates/sheet.css", import.meta.url));
  return { text: readFileSync(file, "utf8"), file };
}
