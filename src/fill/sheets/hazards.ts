import { type FigureSource, isComputed } from "../../model/figure.js";
import type { Step } from "../../model/plan.js";
import { isOf } from "../../model/verbs.js";
import type { Words } from "../../model/words.js";
import { allMessages, placedMessages } from "../messages.js";
import { type Sheet, headOf } from "../sheet.js";
import { waitHtml } from "../step-view.js";
import { signs, stepsOfSign } from "../signs.js";
import { type NumberedHold, holdsOf } from "../stops.js";
import { marked } from "../marks.js";
import { glovesIn, wornIn } from "../wear.js";

/** Every hazard of the job once, what to wear, where help is, and who permits. */
export const hazards: Sheet = {
  name: "hazards",
  applies: (input) => allMessages(input).length > 0,
  view: (input, words) => ({
    ...headOf(input),
    welding: input.steps.some(({ verb }) => verb === "weld"),
    sparks: sparksOf(input.steps),
    messages: placedMessages(input, words),
    worn: wornIn(input.steps, words),
    gloves: glovesIn(input.steps, words),
    signs: ["M", "W", "P"].map((kind) => ({
      title: words.phrases[`signs-${kind}`] ?? kind,
      signs: signsOf(kind, true, input.steps, words),
    })),
    unhung: signsOf("", false, input.steps, words),
  }),
};

/** How far from sparks nothing may burn, what is released before the first and how long somebody watches after the last. */
function sparksOf(steps: readonly Step[]): object | undefined {
  const radiiOf = ({ figures }: Step): Step["figures"] =>
    figures.filter(({ source }) => isOfFireWatch(source));
  const far = steps.find((step) => radiiOf(step).length > 0);
  const radii = far ? radiiOf(far) : [];
  const watch = steps.find(({ waitSource }) => waitSource && isOfFireWatch(waitSource));
  return (
    far &&
    watch && {
      far: far.n,
      radiusHtml: marked(radii.map(({ text }) => text).join(", "), radii),
      before: holdBeforeSparks(steps),
      watch: watch.n,
      timeHtml: waitHtml(watch),
    }
  );
}

function holdBeforeSparks(steps: readonly Step[]): NumberedHold | undefined {
  return holdsOf(
    steps.slice(
      0,
      Math.max(
        0,
        steps.findIndex(({ verb }) => isOf(verb, "hot")),
      ),
    ),
  ).at(-1);
}

function isOfFireWatch(source: FigureSource): boolean {
  return isComputed(source) && source.figure === "fire-watch";
}

interface SignView {
  code: string;
  means: string;
  read: boolean;
  place: string;
}

/** The signs of one kind that the messages call for, those with a place to hang at or those without. */
function signsOf(
  kind: string,
  hung: boolean,
  steps: readonly Step[],
  { phrases }: Words,
): SignView[] {
  return signs
    .filter(({ code }) => code.startsWith(kind) && stepsOfSign(code, steps).length > 0)
    .map(({ code, read = false }) => ({
      code,
      read,
      means: phrases[`sign-${code}`] ?? code,
      place: phrases[`place-${code}`] ?? "",
    }))
    .filter(({ place }) => (place !== "") === hung);
}
