import type { Brief, Message, Step } from "../model/plan.js";
import { type Words, fillIn } from "../model/words.js";
import { stepList } from "./step-list.js";

/** The signal words, gravest first (MIL-DTL-23618H 3.1.5.3d). */
export const signalWords = ["danger", "warning", "caution", "notice"] as const;

/** What the messages of a job are gathered from. */
interface Job {
  brief: Pick<Brief, "safety">;
  steps: readonly Step[];
}

/** Safety messages with the gravest signal word first, each word's in the order given. */
function gravestFirst(messages: readonly Message[]): Message[] {
  return signalWords.flatMap((word) => messages.filter((message) => message.word === word));
}

/** What makes a message the same as another; one other word makes another message. */
export function messageKey({ word, hazard, avoid, consequence, where = "" }: Message): string {
  return JSON.stringify([word, hazard, avoid, consequence, where]);
}

/** Whether a step says a message. */
export function says({ messages }: Step, message: Message): boolean {
  return messages.some((one) => messageKey(one) === messageKey(message));
}

/** Every message of a job, those of the whole job and those of its steps, as often as they are said. */
export function allMessages({ brief, steps }: Job): Message[] {
  return [...brief.safety, ...steps.flatMap(({ messages }) => messages)];
}

/** Each message of a job once, gravest first, with the steps at which it stands. */
export function placedMessages(job: Job, { phrases }: Words): Message[] {
  const once = new Map(allMessages(job).map((message) => [messageKey(message), message]));
  return gravestFirst([...once.values()]).map((message) => {
    const mine = job.steps.filter((step) => says(step, message));
    const key = ["at-no-step", "at-step"][mine.length] ?? "at-steps";
    const steps = stepList(mine, job.steps, phrases["to"] ?? "to");
    const where = fillIn(phrases[key] ?? key, { steps });
    return { ...message, where: [message.where ?? "", where].join(" ").trim() };
  });
}
