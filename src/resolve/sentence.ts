import { textOf } from "../figures/format.js";
import { type Words, fillIn } from "../model/words.js";
import type { Change, Thing } from "../model/world.js";
import type { RecipeStep } from "../model/recipe-step.js";

/** The step's own words with its figures filled in, or its verb's sentence. */
export function sentence(
  words: Words,
  step: RecipeStep,
  verb: string,
  does: readonly Change[],
  things: readonly Thing[],
): string {
  if (step.say !== undefined) return withFigures(step, step.say);
  return fillIn(words.verbs[verb] ?? words.work, {
    Verb: capital(verb.replaceAll("-", " ")),
    things: things.map((thing, i) => countWords(thing, does[i])).join(" and "),
    thing: things.map((thing) => `the ${sided(words, thing)}`).join(" and "),
    where: things[0]?.fixing?.where ?? "",
    to: step.to ?? "",
  });
}

/** A text of a step with the step's figures filled in. */
export function withFigures({ figures = {} }: RecipeStep, text: string): string {
  const texts = Object.entries(figures).map(([name, figure]) => [name, textOf(figure)] as const);
  return fillIn(text, Object.fromEntries(texts));
}

/** An object's words with its side before them. */
export function sided(words: Words, thing: Pick<Thing, "words" | "position">): string {
  return thing.position === ""
    ? thing.words
    : `${words.sides[thing.position] ?? thing.position} ${thing.words}`;
}

function countWords(thing: Thing, change: Change | undefined): string {
  const count = change?.count ?? 1;
  const { kindName, kindPlural, size } = thing.fixing ?? {
    kindName: thing.words,
    kindPlural: thing.words,
    size: "",
  };
  return `the ${count === 1 ? "" : `${count} `}${count === 1 ? kindName : kindPlural}${size === "" ? "" : ` ${size}`}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
