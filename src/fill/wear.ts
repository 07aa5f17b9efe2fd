import type { Message, Step } from "../model/plan.js";
import { type Wear, leastOf } from "../model/wear.js";
import type { Words } from "../model/words.js";
import { stepsOfSign } from "./signs.js";
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

/** What to wear at a step. */
function wearAt(step: Step, { phrases }: Words): string[] {
  const bare = forbidsGloves(step) ? [phrases["no-gloves"] ?? ""] : [];
  return [...leastOf(wornFor(step.messages)).map(({ name }) => name), ...bare];
}

/** Which gloves at which steps, and where none may be worn. */
export function glovesIn(
  steps: readonly Step[],
  { phrases }: Words,
): { wear: string; steps: string }[] {
  const kinds = wornFor(steps.flatMap(({ messages }) => messages)).filter(isGlove);
  const rows = [
    { wear: phrases["no-gloves"] ?? "", mine: steps.filter(forbidsGloves) },
    ...kinds.map(({ id, name }) => ({
      wear: name,
      mine: steps.filter(({ messages }) => wornFor(messages).some((one) => one.id === id)),
    })),
  ];
  return rows
    .filter(({ mine }) => mine.length > 0)
    .map(({ wear, mine }) => ({ wear, steps: stepList(mine, steps, phrases["to"] ?? "to") }));
}

/** All that messages ask to wear, each thing once. */
export function wornFor(messages: readonly Message[]): Wear[] {
  const asked = messages.flatMap(({ wear = [] }) => wear);
  return [...new Map(asked.map((one) => [one.id, one])).values()];
}

function isGlove(worn: Wear): boolean {
  return worn.for === "hands";
}

function forbidsGloves(step: Step): boolean {
  return stepsOfSign(noGloves, [step]).length > 0;
}
