import type { Message } from "../model/plan.js";

const order = ["danger", "warning", "caution", "notice"];

/** Safety messages with the gravest signal word first, each word's in the order given (MIL-DTL-23618H 3.1.5.3d). */
export function gravestFirst(messages: readonly Message[]): Message[] {
  return order.flatMap((word) => messages.filter((message) => message.word === word));
}
