import type { Step, StepFixing } from "../../model/plan.js";
import type { CountLine } from "../../model/proof.js";
import { effectOf } from "../../model/verbs.js";
import { type Words, fillIn } from "../../model/words.js";
import { bagKey, bagsOf } from "../bags.js";
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

interface Moment {
  when: string;
  step: string;
  what: string;
}

/** Baseline, before each closing of a hidden space, at each hand-over, and at the end. */
function momentsOf(steps: readonly Step[], { phrases, sides }: Words): Moment[] {
  const first = steps.find((step) => step.phase === "strip");
  const last = steps.findLast((step) => step.hold) ?? steps.at(-1);
  const bagsBack = lastBackOf(steps);
  let counted = 0;
  const at = (step: Step | undefined, when: string, what: string): Moment[] =>
    step ? [{ when: phrases[when] ?? when, step: step.n, what }] : [];
  const between = steps.flatMap((step) => {
    if (step.night) return at(step, "hand-over", phrases["bags-out"] ?? "");
    const closes = step.hides.length > 0 && ["on", "fit-new"].includes(effectOf(step.verb) ?? "");
    if (!closes) return [];
    const place = [step.title, sides[step.position] ?? step.position].filter((one) => one !== "");
    const here = steps.indexOf(step);
    const since = bagsBack.filter(({ end }) => end >= counted && end < here);
    counted = here;
    const what = [place.join(", "), bagsIn(since, phrases)];
    return at(step, "before-closing", what.filter((one) => one !== "").join(": "));
  });
  return [...at(first, "baseline", ""), ...between, ...at(last, "at-the-end", "")];
}

/** A bag, and the place in the plan of the step that puts the last of it back. */
interface BagBack {
  number: number;
  end: number;
}

function lastBackOf(steps: readonly Step[]): BagBack[] {
  return [...bagsOf(steps)].flatMap(([key, number]) => {
    const end = steps.findLastIndex((step) => bagKey(step) === key && effectOf(step.verb) === "in");
    return end < 0 ? [] : [{ number, end }];
  });
}

function bagsIn(bags: readonly BagBack[], phrases: Words["phrases"]): string {
  if (bags.length === 0) return "";
  const phrase = bags.length === 1 ? "one-bag-back" : "bags-back";
  return fillIn(phrases[phrase] ?? "", { bags: bags.map(({ number }) => number).join(", ") });
}

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
      const key = bagKey(step);
      const group = groups.get(key) ?? newGroup(step, sides, bags.get(key));
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
    size: size.replaceAll(" ", "\u00A0"),
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
