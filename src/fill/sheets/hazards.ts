import type { Step } from "../../model/plan.js";
import type { Words } from "../../model/words.js";
import { allMessages, placedMessages } from "../messages.js";
import { type Sheet, headOf } from "../sheet.js";
import { signs, stepsOfSign } from "../signs.js";
import { stepList } from "../step-list.js";

/** Every hazard of the job once, what to wear, where help is, and who permits. */
export const hazards: Sheet = {
  name: "hazards",
  applies: (input) => allMessages(input).length > 0,
  view: (input, words) => ({
    ...headOf(input),
    welding: input.steps.some(({ verb }) => verb === "weld"),
    messages: placedMessages(input, words),
    signs: ["M", "W", "P"].map((kind) => ({
      title: words.phrases[`signs-${kind}`] ?? kind,
      signs: signsOf(kind, input.steps, words),
    })),
  }),
};

interface SignView {
  code: string;
  means: string;
  steps: string;
  read: boolean;
}

function signsOf(kind: string, steps: readonly Step[], { phrases }: Words): SignView[] {
  return signs
    .filter(({ code }) => code.startsWith(kind))
    .map((sign) => ({ ...sign, mine: stepsOfSign(sign.code, steps) }))
    .filter(({ mine }) => mine.length > 0)
    .map(({ code, read = false, mine }) => ({
      code,
      read,
      means: phrases[`sign-${code}`] ?? code,
      steps: stepList(mine, steps, phrases["to"] ?? "to"),
    }));
}
