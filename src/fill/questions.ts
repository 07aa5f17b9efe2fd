import type { Brief, Step } from "../model/plan.js";
import { type Words, fillIn } from "../model/words.js";
import { gravestFirst } from "./messages.js";
import { asksTorque } from "./skills.js";

/** A why-question, and the step at which it can be asked; the answer stands in the plan. */
export interface Question {
  asks: string;
  step: string;
}

/** Why-questions out of the plan's own facts: what kills first, then what is critical, then the rest. */
export function questionsOf(brief: Brief, steps: readonly Step[], words: Words): Question[] {
  const all = [
    ...ofOrder(steps),
    ...ofMessages(steps),
    ...ofCritical(steps),
    ...ofFixings(steps),
    ...brief.tools.flatMap(({ name, why }) =>
      why ? [asked("why-tool", { name }, undefined)] : [],
    ),
    ...brief.renew.map(({ name }) => asked("why-renew", { name }, undefined)),
  ];
  return all.map(({ key, values, step }) => ({
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

function ofMessages(steps: readonly Step[]): Asked[] {
  const all = steps.flatMap((step) => step.messages.map((message) => ({ message, step })));
  const grave = gravestFirst(all.map(({ message }) => message))
    .filter(({ word }) => word === "danger" || word === "warning")
    .map(({ hazard }) => hazard);
  return [...new Set(grave)].flatMap((hazard) => {
    const first = all.find(({ message }) => message.hazard === hazard);
    return first ? [asked("why-message", { hazard, avoid: first.message.avoid }, first.step)] : [];
  });
}

function ofCritical(steps: readonly Step[]): Asked[] {
  const texts = [...new Set(steps.map(({ critical }) => critical))];
  return texts.flatMap((text) => {
    const step = text && steps.findLast((one) => one.critical === text && !one.hold);
    return step ? [asked("why-critical", { says: step.says }, step)] : [];
  });
}

function ofFixings(steps: readonly Step[]): Asked[] {
  const once = steps.flatMap((step) =>
    step.fixings.filter(({ oneUse }) => oneUse).map(({ plural }) => ({ plural, step })),
  );
  const names = [...new Set(once.map(({ plural }) => plural))];
  return names.map((name) =>
    asked("why-once", { name }, once.find(({ plural }) => plural === name)?.step),
  );
}
