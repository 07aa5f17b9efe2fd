import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { keyOf } from "../../model/world.js";
import { marked, saidOf } from "../marks.js";
import { valueHtml } from "../step-view.js";
import { type Sheet, headOf, sum } from "../sheet.js";
import { type NumberedHold, holdsOf } from "../stops.js";
import { type Joint, weldingOf } from "../welds.js";

/** The welds counted out and back, the test piece, the settings, who welded and who inspected. */
export const welds: Sheet = {
  name: "welds",
  applies: ({ steps }) => steps.some(({ verb }) => verb === "weld"),
  view: (input, words) => {
    const welding = weldingOf(input.steps, words);
    return {
      ...headOf(input),
      ...welding,
      tests: welding.tests.map((test) => ({ ...test, rows: test.count * testRows })),
      all: totalsOf(welding.joints),
      ...settingsOf(input.steps, words),
      notes: notesOf(input.steps),
      closed: closedOf(input.steps),
      holds: weldHolds(input.steps, welding.joints),
    };
  },
};

function totalsOf(joints: readonly Joint[]): { marked: number; drilled: number; welded: number } {
  const of = (key: "marked" | "drilled" | "welded"): number =>
    sum(joints.map((joint) => joint[key]?.count ?? 0));
  return { marked: of("marked"), drilled: of("drilled"), welded: of("welded") };
}

/** Room for two welders in two positions each (the number is ours). */
const testRows = 4;

/** The settings of all weld steps, each once: what is printed, and what is written in when it is released. */
function settingsOf(
  steps: readonly Step[],
  words: Words,
): { facts: { field: string; valueHtml: string }[]; released: string[] } {
  const all = steps.filter(({ verb }) => verb === "weld").flatMap(({ facts }) => facts);
  const once = [...new Map(all.map((fact) => [JSON.stringify(fact), fact])).values()];
  const isBlank = ({ value, figure }: Step["facts"][number]): boolean =>
    figure === undefined && (value ?? "____").includes("____");
  return {
    facts: once
      .filter((fact) => !isBlank(fact))
      .map(({ field, value, figure }) => ({ field, valueHtml: valueHtml(value, figure, words) })),
    released: once.filter(isBlank).map(({ field }) => field),
  };
}

/** What the test welds say of their settings. */
function notesOf(steps: readonly Step[]): string[] {
  const tests = steps.filter(({ verb, count }) => verb === "weld" && count !== undefined);
  return tests.slice(0, 1).flatMap(({ note, figures }) => (note ? [marked(note, figures)] : []));
}

/** The steps that weld up holes which were not welds. */
function closedOf(steps: readonly Step[]): { n: string; saysHtml: string }[] {
  return steps.filter(({ verb, readings }) => verb === "close" && readings.length > 0).map(saidOf);
}

/** The holds of the welding task from its first weld to the last of whoever releases the hold after the last look at a joint. */
function weldHolds(steps: readonly Step[], joints: readonly Joint[]): NumberedHold[] {
  const keys = new Set(joints.map(({ key }) => key));
  const touches = ({ does }: Step): boolean =>
    does.some(({ object, place }) => keys.has(keyOf(object, place)));
  const first = steps.findIndex(({ verb }) => verb === "weld");
  const last = steps.findLastIndex(touches);
  const judge = steps.find(({ hold }, at) => hold && at > last)?.hold?.role;
  const end = steps.findLastIndex(({ hold }) => hold?.role === judge);
  const tasks = new Set(steps.filter(({ verb }) => verb === "weld").map(({ task }) => task));
  const mine = steps.slice(first, end + 1).filter(({ hold, task }) => hold && tasks.has(task));
  return holdsOf(steps).filter(({ n }) => mine.some((step) => step.n === n));
}
