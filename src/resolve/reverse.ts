import { verbs } from "../model/verbs.js";
import { type RecipeStep, targetsOf, verbOf } from "../model/recipe-step.js";

type Placed = { step: RecipeStep; index: number };

/** Derives the way back: pairs in reverse order, each move kept ahead of the steps that need its setting. */
export function reverse(steps: readonly RecipeStep[]): Placed[] {
  return groupsOf(steps)
    .reverse()
    .flatMap(([head, ...rest]) =>
      head && verbOf(head.step) === "move" ? [head, ...rest.reverse()] : [head ?? [], rest].flat(),
    )
    .flatMap(({ step, index }) => {
      const back = backOf(step);
      return back ? [{ step: back, index }] : [];
    });
}

/** A move with the steps that need its setting; every other step by itself. */
function groupsOf(steps: readonly RecipeStep[]): Placed[][] {
  const groups: Placed[][] = [];
  for (const [index, step] of steps.entries()) {
    const open = groups.at(-1);
    const head = open?.[0]?.step;
    if (open && head && enables(head, step)) open.push({ step, index });
    else groups.push([{ step, index }]);
  }
  return groups;
}

function enables(head: RecipeStep, step: RecipeStep): boolean {
  const settings = targetsOf(head).map((name) => `${name} ${head.to ?? ""}`);
  return verbOf(head) === "move" && (step.needs ?? []).some((need) => settings.includes(need));
}

/** The same step the other way round; what it used up on the way out is not used again. */
function backOf(step: RecipeStep): RecipeStep | undefined {
  const verb = verbOf(step);
  if (verb === undefined) return undefined;
  if (verb === "move") return step;
  const pair = verbs[verb]?.pair;
  if (pair === undefined) return undefined;
  const { [verb as "undo"]: target, say: _say, back, note: _note, uses: _uses, ...rest } = step;
  return { ...rest, [pair]: target, ...(back === undefined ? {} : { say: back }) };
}
