import type { Brief, Message, Step } from "../model/plan.js";
import { type Words, fillIn } from "../model/words.js";
import { asksTorque } from "./skills.js";

/** A why-question, and the step at which it can be asked; the answer stands in the plan. */
export interface Question {
  asks: string;
  step: string;
}

/** As many as can be asked and heard in an hour (the number is ours). */
const most = 30;

/** Why-questions out of the plan's own facts: what kills first, then what is critical, then the rest. */
export function questionsOf(brief: Brief, steps: readonly Step[], words: Words): Question[] {
  const all = [
    ...ofOrder(steps),
    ...ofMessages(steps, "danger"),
    ...ofCritical(steps),
    ...ofMessages(steps, "warning"),
    ...brief.tools.flatMap(({ name, why }) =>
      why ? [asked("why-tool", { name }, undefined)] : [],
    ),
    ...brief.renew.map(({ name }) => asked("why-renew", { name }, undefined)),
  ];
  return all.slice(0, most).map(({ key, values, step }) => ({
    asks: fillIn(words.phrases[key] ?? key, values).replaceAll(/_{3,}/g, "…"),
    step: step?.n ?? "",
  }));
}

interface Asked {
  key: string;
  values: Record<string, string>;
  step: Step | undefined;
}

function asked(key: string, values: Record<string, string>, step: Step | undefined): Asked {
  return { key, values, step };
}

/** Why a supply goes first and comes back late, and why the maker's torque is asked for. */
function ofOrder(steps: readonly Step[]): Asked[] {
  const isolates = steps.filter(({ verb }) => verb === "isolate" || verb === "drain");
  const torque = steps.find(asksTorque);
  return [
    ...isolates.map((step) => asked("why-first", { says: step.says }, step)),
    ...(torque ? [asked("why-torque", {}, torque)] : []),
  ];
}

/** Each hazard once, at the first step that says it, in the order of the work. */
function ofMessages(steps: readonly Step[], word: Message["word"]): Asked[] {
  const said = steps.flatMap((step) =>
    step.messages.filter((message) => message.word === word).map((message) => ({ message, step })),
  );
  const hazards = said.map(({ message }) => message.hazard);
  return said
    .filter(({ message }, at) => hazards.indexOf(message.hazard) === at)
    .map(({ message: { hazard, avoid }, step }) => asked("why-message", { hazard, avoid }, step));
}

function ofCritical(steps: readonly Step[]): Asked[] {
  const texts = [...new Set(steps.map(({ critical }) => critical))];
  return texts.flatMap((text) => {
    const step = text && steps.findLast((one) => one.critical === text && !one.hold);
    return step ? [asked("why-critical", { says: step.says }, step)] : [];
  });
}
