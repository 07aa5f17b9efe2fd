import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { keyOf } from "../../model/world.js";
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
      tests: welding.tests.map((test) => ({ ...test, rows: [...Array(test.count).keys()] })),
      all: totalsOf(welding.joints),
      facts: factsOf(input.steps, words),
      holds: weldHolds(input.steps, welding.joints),
    };
  },
};

function totalsOf(joints: readonly Joint[]): { marked: number; drilled: number; welded: number } {
  const of = (key: "marked" | "drilled" | "welded"): number =>
    sum(joints.map((joint) => joint[key]?.count ?? 0));
  return { marked: of("marked"), drilled: of("drilled"), welded: of("welded") };
}

/** The settings of all weld steps, each once. */
function factsOf(steps: readonly Step[], words: Words): { field: string; valueHtml: string }[] {
  const all = steps.filter(({ verb }) => verb === "weld").flatMap(({ facts }) => facts);
  const once = new Map(all.map((fact) => [JSON.stringify(fact), fact]));
  return [...once.values()].map(({ field, value, figure }) => ({
    field,
    valueHtml: valueHtml(value, figure, words),
  }));
}

/** The holds of the welding task from its first weld to the hold after the last look at a joint. */
function weldHolds(steps: readonly Step[], joints: readonly Joint[]): NumberedHold[] {
  const keys = new Set(joints.map(({ key }) => key));
  const touches = ({ does }: Step): boolean =>
    does.some(({ object, place }) => keys.has(keyOf(object, place)));
  const first = steps.findIndex(({ verb }) => verb === "weld");
  const last = steps.findLastIndex(touches);
  const end = steps.findIndex(({ hold }, at) => hold && at > last);
  const tasks = new Set(steps.filter(({ verb }) => verb === "weld").map(({ task }) => task));
  const mine = steps.slice(first, end + 1).filter(({ hold, task }) => hold && tasks.has(task));
  return holdsOf(steps).filter(({ n }) => mine.some((step) => step.n === n));
}
