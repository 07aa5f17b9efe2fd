import type { Step } from "../model/plan.js";
import { type Words, fillIn } from "../model/words.js";
import { stepsOfSign, wornFor } from "./signs.js";
import { stepList } from "./step-list.js";

/** What is worn at some steps, and what it is worn against. */
export interface Worn {
  steps: string;
  against: string;
  wear: string;
}

/** The sign that forbids gloves. */
const noGloves = "P028";

/** Every step that asks for something to wear stands in one row, with all others that ask for the same. */
export function wornIn(steps: readonly Step[], words: Words): Worn[] {
  const rows = new Map<string, Step[]>();
  for (const step of steps) {
    const wear = wearAt(step, words).join(", ");
    if (wear !== "") rows.set(wear, [...(rows.get(wear) ?? []), step]);
  }
  return [...rows].map(([wear, mine]) => ({
    wear,
    against: hazardsOf(mine).join("; "),
    steps: stepList(mine, steps, words.phrases["to"] ?? "to"),
  }));
}

/** The hazards of some steps that something is worn or left off against. */
function hazardsOf(steps: readonly Step[]): string[] {
  const asking = steps
    .flatMap(({ messages }) => messages)
    .filter(({ wear, signs }) => wear ?? signs?.includes(noGloves));
  return [...new Set(asking.map(({ hazard }) => hazard))];
}

/** What to wear at a step: of two masks for the lungs, one that does the work of both. */
function wearAt(step: Step, { phrases }: Words): string[] {
  const asked = wornFor(step.messages);
  const all = asked.filter((one) => !asked.some((other) => isMoreOf(other, one)));
  const masks = all.filter((one) => speaksOf(one, phrases["breath-words"]));
  const bare = forbidsGloves(step) ? [phrases["no-gloves"] ?? ""] : [];
  if (masks.length < 2) return [...all, ...bare];
  const and = ` ${phrases["and"] ?? ""} `;
  const one = fillIn(phrases["one-mask"] ?? "", { masks: masks.join(and) });
  return [...all.filter((worn) => !masks.includes(worn)), one, ...bare];
}

/** Whether a thing is another with one word more: closed eye protection is eye protection. */
function isMoreOf(more: string, less: string): boolean {
  return more.split(" ").slice(1).join(" ") === less;
}

/** Which gloves at which steps, and where none may be worn. */
export function glovesIn(
  steps: readonly Step[],
  { phrases }: Words,
): { wear: string; steps: string }[] {
  const worn = wornFor(steps.flatMap(({ messages }) => messages));
  const kinds = worn.filter((one) => speaksOf(one, phrases["hand-words"]));
  const rows = [
    { wear: phrases["no-gloves"] ?? "", mine: steps.filter(forbidsGloves) },
    ...kinds.map((wear) => ({
      wear,
      mine: steps.filter(({ messages }) => wornFor(messages).includes(wear)),
    })),
  ];
  return rows
    .filter(({ mine }) => mine.length > 0)
    .map(({ wear, mine }) => ({ wear, steps: stepList(mine, steps, phrases["to"] ?? "to") }));
}

function forbidsGloves(step: Step): boolean {
  return stepsOfSign(noGloves, [step]).length > 0;
}

function speaksOf(thing: string, words = ""): boolean {
  return words.split(", ").some((word) => word !== "" && thing.includes(word));
}
