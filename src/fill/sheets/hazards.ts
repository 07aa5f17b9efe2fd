import type { Message, Step } from "../../model/plan.js";
import { type Words, fillIn } from "../../model/words.js";
import { keyOf } from "../guards.js";
import { gravestFirst } from "../messages.js";
import { type Sheet, type SheetInput, headOf } from "../sheet.js";
import { signs, stepsOfSign } from "../signs.js";
import { stepList } from "../step-list.js";

/** Every hazard of the job once, what to wear, where help is, and who permits. */
export const hazards: Sheet = {
  name: "hazards",
  applies: (input) => all(input).length > 0,
  view: (input, words) => ({
    ...headOf(input),
    welding: input.steps.some(({ verb }) => verb === "weld"),
    messages: messagesOf(input, words),
    signs: ["M", "W", "P"].map((kind) => ({
      title: words.phrases[`signs-${kind}`] ?? kind,
      signs: signsOf(kind, input.steps, words),
    })),
  }),
};

function all({ brief, steps }: SheetInput): Message[] {
  return [...brief.safety, ...steps.flatMap(({ messages }) => messages)];
}

/** Each message once, gravest first, with the steps at which it stands. */
export function messagesOf(input: SheetInput, words: Words): Message[] {
  const once = new Map(all(input).map((message) => [keyOf(message), message]));
  return gravestFirst([...once.values()]).map((message) => {
    const mine = input.steps.filter(({ messages }) =>
      messages.some((one) => keyOf(one) === keyOf(message)),
    );
    const key = ["at-no-step", "at-step"][mine.length] ?? "at-steps";
    const steps = stepList(mine, input.steps, words.phrases["to"] ?? "to");
    const where = fillIn(words.phrases[key] ?? key, { steps });
    return { ...message, where: [message.where ?? "", where].join(" ").trim() };
  });
}

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
