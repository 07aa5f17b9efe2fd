import type { Figure } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { type Words, fillIn } from "../model/words.js";
import { hasBlank, withoutBlanks } from "./marks.js";
import { stepList } from "./step-list.js";

/** The figures that the maker's manual or a product's sheet must give: torques and times by their steps, all others in words. */
export interface LookUps {
  torques: string;
  waits: string;
  /** What the box of each says aloud is unlike any other's. */
  others: { n: string; says: string; tick: string }[];
}

/** What the steps ask for; nothing where no step asks. */
export function lookUpsOf(steps: readonly Step[], { phrases }: Words): LookUps | undefined {
  const listed = (asks: (step: Step) => boolean): string =>
    stepList(steps.filter(asks), steps, phrases["to"] ?? "to");
  const found = {
    torques: listed(asksForTorque),
    waits: listed(asksToWait),
    others: steps.flatMap((step) =>
      othersOf(step).map((says, i) => ({
        n: step.n,
        says,
        tick: fillIn(phrases["looked-up"] ?? "", { n: step.n, i: i === 0 ? "" : String(i + 1) }),
      })),
    ),
  };
  const some = found.torques !== "" || found.waits !== "" || found.others.length > 0;
  return some ? found : undefined;
}

/** Whether a step waits for a time that only the maker's sheet tells. */
export function asksToWait({ wait, waitSource }: Step): boolean {
  return waitSource === "maker" && hasBlank(wait);
}

function asksForTorque({ figures, fixings, verb }: Step): boolean {
  const tightened = effectOf(verb) === "in" ? fixings : [];
  return (
    tightened.some(({ torque }) => isOpen(torque)) ||
    figures.some((figure) => figure.kind === "torque" && isAsked(figure))
  );
}

/** The sentences that hold a figure to write in, and the names of the facts that are one. */
function othersOf({ figures, facts, says, hold, note = "" }: Step): string[] {
  const asked = figures.filter((figure) => figure.kind !== "torque" && isAsked(figure));
  const sentences = [says, hold?.accept ?? "", note].flatMap((text) => text.split(/(?<=\.)\s/));
  const said = sentences.filter((sentence) => asked.some(({ text }) => sentence.includes(text)));
  const open = facts.filter(({ figure }) => isOpen(figure)).map(({ field }) => field);
  return [...said.map(withoutBlanks), ...open];
}

function isAsked({ source, text }: Step["figures"][number]): boolean {
  return source === "maker" && hasBlank(text);
}

function isOpen(figure: Figure | undefined): boolean {
  return figure?.source === "maker" && figure.value === undefined;
}
