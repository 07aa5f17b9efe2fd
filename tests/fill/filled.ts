import { fill } from "../../src/fill/fill.js";
import type { SheetInput } from "../../src/fill/sheet.js";
import { sheets } from "../../src/fill/sheets.js";
import type { Opened, PlanFile } from "../../src/index.js";
import { jobsOf, opened, own, planned } from "../plans.js";

/** What the sheets of a plan are filled from. */
export function inputOf({ job, steps, count, brief, car, digest }: PlanFile): SheetInput {
  const rest = { findings: [], ratings: [], draft: false, large: false, printed: [], laid: {} };
  return { job, steps, count, brief, car, revision: digest.slice(0, 8), ...rest };
}

/** The repairs of the own library on every car, planned once. */
export const repairs: { name: string; opened: Opened; plan: PlanFile }[] = jobsOf(opened(own))
  .filter(({ name }) => /^(seat-crossmember|floor-pan-section) on/.test(name))
  .map(({ name, ask }) => {
    const made = planned(ask, own);
    if (!made.value) throw new Error(made.diagnostics.map((d) => d.message).join("\n"));
    return { name, opened: made.opened, plan: made.value };
  });

/** One sheet's HTML, filled from a plan. */
export function filled(name: string, { words }: Opened, plan: PlanFile): string {
  const sheet = sheets.find((one) => one.name === name);
  if (!sheet) throw new Error(`there is no sheet '${name}'`);
  return fill(sheet, inputOf(plan), words);
}

/** The words that a reader sees, tags and marks taken out and entities read. */
export function seen(html: string): string {
  const named: Record<string, string> = { "&#x27;": "'", "&quot;": '"', "&amp;": "&", "&lt;": "<" };
  return html
    .replaceAll(/<sup>.*?<\/sup>/g, "")
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll(/&[#\w]+;/g, (entity) => named[entity] ?? " ")
    .replaceAll(/\s+/g, " ");
}

/** What the blanks and boxes of a page say aloud. */
export function labels(html: string): string[] {
  return [...html.matchAll(/aria-label="([^"]*)"/g)].map((match) => match[1] ?? "");
}

/** Whether a list of steps as it is printed, '12, 17, 182 to 186', holds a step. */
export function lists(printed: string, n: string): boolean {
  return printed.split(", ").some((run) => {
    const [from = 0, upTo = from] = run.split(" to ").map(Number);
    return Number(n) >= from && Number(n) <= upTo;
  });
}
