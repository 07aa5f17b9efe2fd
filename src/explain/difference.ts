import type { PlanFile } from "../model/plan-file.js";
import type { Step } from "../model/plan.js";

/** What differs between two plans of a job. */
export interface Difference {
  /** Steps that only the first plan has. */
  here: Step[];
  /** Steps that only the second plan has. */
  there: Step[];
  /** Steps of both whose words or counts differ. */
  changed: { here: Step; there: Step }[];
  /** How many steps of both stand in another order. */
  moved: number;
  /** Tools that only one plan asks for. */
  tools: { here: string[]; there: string[] };
}

/** Compares two plans step by step, by the steps' ids. */
export function difference(one: PlanFile, other: PlanFile): Difference {
  const [ours, theirs] = [byId(one.steps), byId(other.steps)];
  const shared = one.steps.flatMap((here) => {
    const there = theirs.get(here.id);
    return there ? [{ here, there }] : [];
  });
  const tools = (plan: PlanFile): string[] => plan.brief.tools.map((tool) => tool.name);
  return {
    here: one.steps.filter((step) => !theirs.has(step.id)),
    there: other.steps.filter((step) => !ours.has(step.id)),
    changed: shared.filter(({ here, there }) => said(here) !== said(there)),
    moved: movedOf(shared.map(({ there }) => other.steps.indexOf(there))),
    tools: {
      here: tools(one).filter((name) => !tools(other).includes(name)),
      there: tools(other).filter((name) => !tools(one).includes(name)),
    },
  };
}

function byId(steps: readonly Step[]): Map<string, Step> {
  return new Map(steps.map((step) => [step.id, step]));
}

function said(step: Step): string {
  return JSON.stringify([step.says, step.does, step.found]);
}

/** All but the longest run of places that only rise. */
function movedOf(places: readonly number[]): number {
  const ends: number[] = [];
  for (const place of places) {
    const at = ends.findIndex((end) => end >= place);
    ends[at < 0 ? ends.length : at] = place;
  }
  return places.length - ends.length;
}

/** A difference in the words of the trade, one line each; `a` and `b` name the two plans. */
export function differenceWords(found: Difference, a: string, b: string): string[] {
  const list = (title: string, lines: readonly string[]): string[] =>
    lines.length > 0 ? [title, ...lines.map((line) => `  ${line}`)] : [];
  const step = ({ n, title, position, says }: Step): string =>
    `${n}  ${title}${position === "" ? "" : `, ${position}`}: ${says}`;
  const all = [
    ...list(`Only with ${a}:`, found.here.map(step)),
    ...list(`Only with ${b}:`, found.there.map(step)),
    ...list(
      "Different:",
      found.changed.flatMap(({ here, there }) => [`${a}  ${step(here)}`, `${b}  ${step(there)}`]),
    ),
    ...list(`Tools only with ${a}:`, found.tools.here),
    ...list(`Tools only with ${b}:`, found.tools.there),
    ...(found.moved > 0 ? [`${found.moved} steps stand in another order.`] : []),
  ];
  return all.length > 0 ? all : [`Nothing differs between ${a} and ${b}.`];
}
