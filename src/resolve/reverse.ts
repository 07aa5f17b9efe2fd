import { verbs } from "../model/verbs.js";
import { type RecipeStep, verbOf } from "./recipe-step.js";

/** Derives the way back: pairs in reverse order, each move kept ahead of the steps that it enables. */
export function reverse(steps: readonly RecipeStep[]): { step: RecipeStep; index: number }[] {
  const groups: { step: RecipeStep; index: number }[][] = [[]];
  for (const [index, step] of steps.entries()) {
    if (verbOf(step) === "move") groups.push([]);
    groups.at(-1)?.push({ step, index });
  }
  return groups.reverse().flatMap((group) => {
    const moves = group.filter(({ step }) => verbOf(step) === "move");
    const rest = group.filter(({ step }) => verbOf(step) !== "move").reverse();
    return [...moves, ...rest].flatMap(({ step, index }) => {
      const back = backOf(step);
      return back ? [{ step: back, index }] : [];
    });
  });
}

function backOf(step: RecipeStep): RecipeStep | undefined {
  const verb = verbOf(step);
  if (verb === undefined) return undefined;
  if (verb === "move") return step;
  const pair = verbs[verb]?.pair;
  if (pair === undefined) return undefined;
  const { [verb as "undo"]: target, say: _say, back, note: _note, ...rest } = step;
  return { ...rest, [pair]: target, ...(back === undefined ? {} : { say: back }) };
}
