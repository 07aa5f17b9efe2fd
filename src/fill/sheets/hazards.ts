import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { allMessages, placedMessages } from "../messages.js";
import { type Sheet, headOf } from "../sheet.js";
import { runsOf } from "../runs.js";
import { signs, stepsOfSign, wornFor } from "../signs.js";
import { stepList } from "../step-list.js";

/** Every hazard of the job once, what to wear, where help is, and who permits. */
export const hazards: Sheet = {
  name: "hazards",
  applies: (input) => allMessages(input).length > 0,
  view: (input, words) => ({
    ...headOf(input),
    welding: input.steps.some(({ verb }) => verb === "weld"),
    messages: placedMessages(input, words),
    worn: wornIn(input.steps, words),
    signs: ["M", "W", "P"].map((kind) => ({
      title: words.phrases[`signs-${kind}`] ?? kind,
      signs: signsOf(kind, input.steps, words),
    })),
  }),
};

interface Worn {
  steps: string;
  work: string;
  wear: string;
}

/** What to wear, block by block of the checklist; neighbours that ask for the same stand together. */
function wornIn(steps: readonly Step[], { phrases }: Words): Worn[] {
  const blocks: { run: Step[]; work: string[]; wear: string }[] = [];
  for (const run of runsOf(steps)) {
    const [first] = run;
    const wear = wornFor(run.flatMap(({ messages }) => messages)).join(", ");
    const last = blocks.at(-1);
    if (!first || wear === "") continue;
    if (last?.wear === wear) {
      last.run.push(...run);
      if (!last.work.includes(first.title)) last.work.push(first.title);
    } else blocks.push({ run: [...run], work: [first.title], wear });
  }
  return blocks.map(({ run, work, wear }) => ({
    steps: stepList(run, steps, phrases["to"] ?? "to"),
    work: work.join(", "),
    wear,
  }));
}

interface SignView {
  code: string;
  means: string;
  read: boolean;
}

function signsOf(kind: string, steps: readonly Step[], { phrases }: Words): SignView[] {
  return signs
    .filter(({ code }) => code.startsWith(kind) && stepsOfSign(code, steps).length > 0)
    .map(({ code, read = false }) => ({ code, read, means: phrases[`sign-${code}`] ?? code }));
}
