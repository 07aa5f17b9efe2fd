import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { keysOf } from "../../model/world.js";
import { shortly } from "../guards.js";
import { marked, saidOf } from "../marks.js";
import { type Sheet, headOf, sum } from "../sheet.js";
import { type NumberedHold, holdsOf } from "../stops.js";
import { stepList } from "../step-list.js";
import { settingsOf } from "../weld-settings.js";
import { type Joint, type Other, weldingOf } from "../welds.js";

/** The welds counted out and back, the test piece, the settings, who welded and who inspected. */
export const welds: Sheet = {
  name: "welds",
  applies: ({ steps }) => steps.some(({ verb }) => verb === "weld"),
  view: (input, words) => {
    const welding = weldingOf(input.steps, words);
    const joining = arcSteps(input.steps, welding.tests);
    return {
      ...headOf(input),
      ...welding,
      joints: welding.joints.map((joint, i) => ({ ...joint, letter: letterOf(i) })),
      tests: welding.tests.map((test, i) => testView(test, welding.tests.slice(0, i))),
      positions: positionsOf(welding.tests),
      all: totalsOf(welding.joints),
      settings: settingsOf(input.steps, words),
      notes: notesOf(input.steps),
      order: joining.map(orderOf),
      guards: shortly(joining.flatMap(({ messages }) => messages)),
      closed: closedOf(input.steps),
      punched: punchedAt(input.steps),
      map: mapOf(input.steps, welding.joints, words),
      holds: weldHolds(input.steps, welding.joints),
    };
  },
};

/** A joint's letter, which stands on the map too. */
function letterOf(at: number): string {
  return String.fromCharCode(65 + at);
}

function totalsOf(joints: readonly Joint[]): { marked: number; drilled: number; welded: number } {
  const of = (key: "marked" | "drilled" | "welded"): number =>
    sum(joints.map((joint) => joint[key]?.count ?? 0));
  return { marked: of("marked"), drilled: of("drilled"), welded: of("welded") };
}

/** As many welders have rows of their own (the number is ours). */
const welders = [1, 2];

/** The positions of all tests, each once; where no test names one it is written in. */
function positionsOf(tests: readonly Other[]): string[] {
  const named = new Set(tests.flatMap(({ positions }) => positions));
  return named.size > 0 ? [...named] : [""];
}

/** The pieces of a test by their position: in every position as many as the step asks for. */
function piecesOf(test: Other): string[] {
  return positionsOf([test]).flatMap((position) =>
    Array.from({ length: test.count }, () => position),
  );
}

/** The rows of a test: every welder makes all its pieces, numbered on from the tests before. */
function testView(test: Other, before: readonly Other[]): object {
  const first = before.flatMap(piecesOf).length + 1;
  const rowsOf = (welder: number): object[] =>
    piecesOf(test).map((position, i) => ({ piece: `${welder}.${first + i}`, position }));
  return { ...test, welders: welders.map((welder) => ({ welder, rows: rowsOf(welder) })) };
}

/** What the test welds say of their settings, and at which step. */
function notesOf(steps: readonly Step[]): { n: string; noteHtml: string }[] {
  const tests = steps.filter(({ verb, count }) => verb === "weld" && count !== undefined);
  return tests
    .slice(0, 1)
    .flatMap(({ n, note, figures }) => (note ? [{ n, noteHtml: marked(note, figures) }] : []));
}

/** The steps with an arc at the car: all that tack, weld or close but the test pieces, which count for each welder. */
function arcSteps(steps: readonly Step[], tests: readonly Other[]): Step[] {
  const tried = new Set(tests.map(({ n }) => n));
  return steps.filter(({ n, verb }) => ["tack", "weld", "close"].includes(verb) && !tried.has(n));
}

/** What a step says, and its note. */
function orderOf(step: Step): { n: string; saysHtml: string; noteHtml: string } {
  return { ...saidOf(step), noteHtml: marked(step.note ?? "", step.figures) };
}

/** At which steps the map is drawn on: where welds are made and stray holes closed. */
function mapOf(steps: readonly Step[], joints: readonly Joint[], { phrases }: Words): object {
  const listed = (some: readonly (string | undefined)[]): string =>
    stepList(
      steps.filter(({ n }) => some.includes(n)),
      steps,
      phrases["to"] ?? "to",
    );
  return {
    welded: listed(joints.map((joint) => joint.welded?.n)),
    closed: listed(closedOf(steps).map(({ n }) => n)),
    tacked: listed(steps.filter(({ verb }) => verb === "tack").map(({ n }) => n)),
  };
}

/** How the places of the new welds are punched into the new panel. */
function punchedAt(steps: readonly Step[]): { n: string; saysHtml: string }[] {
  return steps.filter(({ verb }) => verb === "punch").map(saidOf);
}

/** The steps that weld up holes which were not welds. */
function closedOf(steps: readonly Step[]): { n: string; saysHtml: string }[] {
  return steps.filter(({ verb, readings }) => verb === "close" && readings.length > 0).map(saidOf);
}

/** The holds of the welding task from its first weld to the last of whoever releases the hold after the last look at a joint. */
function weldHolds(steps: readonly Step[], joints: readonly Joint[]): NumberedHold[] {
  const keys = new Set(joints.map(({ key }) => key));
  const touches = (step: Step): boolean => keysOf(step).some((key) => keys.has(key));
  const first = steps.findIndex(({ verb }) => verb === "weld");
  const last = steps.findLastIndex(touches);
  const judge = steps.find(({ hold }, at) => hold && at > last)?.hold?.role;
  const end = steps.findLastIndex(({ hold }) => hold?.role === judge);
  const tasks = new Set(steps.filter(({ verb }) => verb === "weld").map(({ task }) => task));
  const mine = steps.slice(first, end + 1).filter(({ hold, task }) => hold && tasks.has(task));
  return holdsOf(steps).filter(({ n }) => mine.some((step) => step.n === n));
}
