import { unbroken } from "../marks.js";
import type { Step, StepFixing } from "../../model/plan.js";
import type { CountLine } from "../../model/proof.js";
import { effectOf } from "../../model/verbs.js";
import type { Words } from "../../model/words.js";
import { bagKey, bagsOf } from "../bags.js";
import { momentsOf } from "../moments.js";
import { type Sheet, type SheetInput, type Totals, headOf, totalsOf } from "../sheet.js";

/** One line for each fixing and place, by bag in the order of work, and the moments at which two people count. */
export const count: Sheet = {
  name: "count",
  applies: ({ count: lines }) => lines.length > 0,
  view: (input, words) => ({
    ...headOf(input),
    moments: momentsOf(input.steps, words),
    groups: groupsOf(input, words),
    leaveOuts: leaveOutsOf(input.steps),
  }),
};

interface Line extends CountLine {
  name: string;
  size: string;
  where: string;
  full: number;
  oneUse: boolean;
}

interface Group {
  title: string;
  side: string;
  bag: string;
  out: string;
  back: string;
  lines: Line[];
  several: boolean;
  total: Totals;
}

/** The lines of one task and side together, in the order in which they come off. */
function groupsOf({ steps, count: lines }: SheetInput, { sides }: Words): Group[] {
  const bags = bagsOf(steps);
  const groups = new Map<string, Group>();
  for (const step of steps) {
    for (const fixing of step.fixings) {
      const line = lines.find((one) => one.kind === fixing.kind && one.place === fixing.place);
      if (!line) continue;
      const bag = fixing.oneUse ? undefined : bags.get(bagKey(step));
      const key = JSON.stringify([bagKey(step), bag]);
      const group = groups.get(key) ?? newGroup(step, sides, bag);
      groups.set(key, addTo(group, step, line, fixing));
    }
  }
  return [...groups.values()].map((group) => ({
    ...group,
    several: group.lines.length > 1,
    total: totalsOf([], group.lines),
  }));
}

function newGroup(step: Step, sides: Words["sides"], bag: number | undefined): Group {
  const { title, position } = step;
  const side = sides[position] ?? position;
  const total = totalsOf([], []);
  return {
    title,
    side,
    bag: bag === undefined ? "" : String(bag),
    out: "",
    back: "",
    lines: [],
    several: false,
    total,
  };
}

function addTo(group: Group, step: Step, line: CountLine, fixing: StepFixing): Group {
  const out = effectOf(step.verb) === "out";
  const known = group.lines.some((one) => one.kind === line.kind && one.place === line.place);
  const { plural, size, where, full, oneUse } = fixing;
  const added = {
    ...line,
    name: plural,
    size: unbroken(size),
    where,
    full,
    oneUse,
  };
  return {
    ...group,
    out: out && group.out === "" ? step.n : group.out,
    back: out ? group.back : step.n,
    lines: known ? group.lines : [...group.lines, added],
  };
}

function leaveOutsOf(steps: readonly Step[]): { what: string; reason: string }[] {
  return steps
    .filter((step) => ["leave-out", "leave-off"].includes(step.verb))
    .map((step) => ({ what: step.says, reason: step.does[0]?.reason ?? "" }));
}
