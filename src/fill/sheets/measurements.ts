import type { Step } from "../../model/plan.js";
import { type Series, allowedHtml, isLimited, readingsOf } from "../readings.js";
import { type Sheet, type SheetInput, headOf } from "../sheet.js";
import { saidUnwritten } from "../marks.js";
import { asksTorque } from "../skills.js";
import { placeOf } from "../place.js";
import { holdsOf } from "../stops.js";
import { torquesOf } from "../torques.js";

/** Every reading of the job in one place, with the gauge it was taken with; torques too. */
export const measurements: Sheet = {
  name: "measurements",
  applies: ({ steps }) =>
    steps.some((step) => asksTorque(step) || (step.hold ?? step).readings.length > 0),
  view: (input, words) => {
    const { once, again } = readingsOf(input.steps, words);
    return {
      ...headOf(input),
      gauges: gaugesOf(input),
      once: once.map(({ step, readings }) => ({
        ...saidUnwritten(step),
        where: placeOf(step, words),
        allowedHtml: isLimited(step) ? allowedHtml(step) : "",
        readings,
      })),
      again: again.map((series) => seriesView(series, input.steps)),
      torques: torquesOf(input.steps, words),
    };
  },
};

function gaugesOf({ brief }: SheetInput): string[] {
  return brief.tools.filter(({ reads }) => reads !== undefined).map(({ name }) => name);
}

/** A series of so few readings stands on one page (the number is ours). */
const onOnePage = 4;

/** As many steps stand beside each other as a hand can write in, the most of them in narrow columns of so many millimetres (the numbers are ours). */
const mostBeside = 5;
const pen = { narrow: 17, wide: 22 };

/** A series with the holds that follow its readings at once, where they are judged; taken more often, its steps stand below each other. */
function seriesView({ steps: taken, readings }: Series, steps: readonly Step[]): object {
  const next = taken.flatMap((step) => steps[steps.indexOf(step) + 1] ?? []);
  const judged = holdsOf(steps).flatMap((hold) => {
    const step = next.find(({ n }) => n === hold.n);
    return step ? [{ ...hold, allowedHtml: allowedHtml(step) }] : [];
  });
  const turned = taken.length > mostBeside;
  return {
    taken: taken.map(saidUnwritten),
    readings,
    gauged: readings.some(({ unit }) => unit !== ""),
    judged,
    turned,
    penWidth: taken.length < mostBeside ? pen.wide : pen.narrow,
    short: (turned ? taken : readings).length <= onOnePage,
  };
}
