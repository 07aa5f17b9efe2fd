import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import { figureHtml, markHtml, marked, saidUnwritten } from "./marks.js";
import { placeOf } from "./place.js";

/** Something tightened to a torque: the step, its place, what it says, and the torque with its source mark. */
export interface TorqueLine {
  n: string;
  where: string;
  saysHtml: string;
  torqueHtml: string;
}

/** Every torque of a plan, where something is tightened. */
export function torquesOf(steps: readonly Step[], words: Words): TorqueLine[] {
  return steps
    .filter(({ verb }) => ["in", "make-join"].includes(effectOf(verb) ?? ""))
    .flatMap((step) => {
      const torqueHtml = torqueOf(step, words);
      return torqueHtml === ""
        ? []
        : [
            {
              ...saidUnwritten(step),
              where: placeOf(step, words),
              torqueHtml,
            },
          ];
    });
}

function torqueOf({ fixings, figures }: Step, words: Words): string {
  const [asked] = fixings.flatMap(({ torque }) => (torque ? [torque] : []));
  if (asked) return figureHtml(asked, words);
  const written = figures.find(({ text }) => /(N·m|lbf·ft)$/.test(text));
  return written ? `${marked(written.text, [])}${markHtml(written.mark)}` : "";
}
