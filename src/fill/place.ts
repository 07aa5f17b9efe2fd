import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";

/** The task and side of a step that exists on more than one side; nothing for any other. */
export function placeOf(
  { title, position }: Pick<Step, "title" | "position">,
  { sides }: Words,
): string {
  return position === "" ? "" : `${title}, ${sides[position] ?? position}`;
}
