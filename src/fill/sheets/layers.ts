import type { Brief, Step } from "../../model/plan.js";
import { effectOf } from "../../model/verbs.js";
import type { Words } from "../../model/words.js";
import { type Sheet, type SheetInput, headOf } from "../sheet.js";

/** One page that shows what lies over what: the parts in layers, outermost first. */
export const layers: Sheet = {
  name: "layers",
  applies: ({ steps }) => steps.filter(comesOff).length > 1,
  view: (input, words) => ({ ...headOf(input), layers: layersOf(input, words) }),
};

interface Box {
  name: string;
  step: string;
  /** The steps at which the parts below it come off. */
  over: string;
}

/** Parts that are taken off or laid aside, and the one that is cut out. */
function comesOff({ phase, verb }: Step): boolean {
  const effect = effectOf(verb) ?? "";
  return (phase === "strip" && ["off", "ease"].includes(effect)) || effect === "cut-off";
}

/** A part lies one layer deeper than the deepest part that hides it. */
function layersOf({ steps, brief }: SheetInput, words: Words): { number: number; boxes: Box[] }[] {
  const parts = steps.filter(comesOff);
  const keyOf = (step: Step): string => step.touches[0] ?? "";
  const depths = new Map<string, number>();
  const depthOf = (step: Step): number => {
    const known = depths.get(keyOf(step));
    if (known !== undefined) return known;
    depths.set(keyOf(step), 0);
    const above = parts.filter((one) => one.hides.includes(keyOf(step)));
    const depth = Math.max(0, ...above.map((one) => depthOf(one) + 1));
    depths.set(keyOf(step), depth);
    return depth;
  };
  const boxOf = (step: Step): Box => {
    const under = parts.filter((one) => step.hides.includes(keyOf(one)));
    return {
      name: nameOf(step, brief, words),
      step: step.n,
      over: under.map((one) => one.n).join(", "),
    };
  };
  const deepest = Math.max(0, ...parts.map(depthOf));
  return Array.from({ length: deepest + 1 }, (_, depth) => ({
    number: depth + 1,
    boxes: parts.filter((step) => depthOf(step) === depth).map(boxOf),
  }));
}

/** The part that comes off, as the range calls it, with its side. */
function nameOf({ part = "", title, position }: Step, brief: Brief, { sides }: Words): string {
  const name = brief.parts[part] ?? title;
  return position === "" ? name : `${name}, ${sides[position] ?? position}`;
}
