import { textOf } from "../figures/format.js";
import { effectOf } from "../model/verbs.js";
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
  if (step.say !== undefined && !takesInstead(verb, things))
    return withFigures(words, step, step.say);
  return fillIn(words.verbs[verb] ?? words.work, {
    Verb: capital(verb.replaceAll("-", " ")),
    things: listed(
      words,
      things.map((thing, i) => countWords(thing, does[i])),
    ),
    thing: listed(
      words,
      things.map((thing) => sided(words, thing)),
    ),
    where: things[0]?.fixing?.where ?? "",
    to: step.to ?? "",
  });
}

/** A text of a step with the step's figures filled in. */
export function withFigures(words: Words, { figures = {} }: RecipeStep, text: string): string {
  const texts = Object.entries(figures).map(
    ([name, figure]) => [name, textOf(figure, words)] as const,
  );
  return fillIn(text, Object.fromEntries(texts));
}

/** An object's words with its side before them. */
export function sided(words: Words, thing: Pick<Thing, "words" | "position">): string {
  return thing.position === ""
    ? thing.words
    : `${words.sides[thing.position] ?? thing.position} ${thing.words}`;
}

/** Whether the step takes out another kind of fastener than the recipe speaks of. */
function takesInstead(verb: string, things: readonly Thing[]): boolean {
  return effectOf(verb) === "out" && things.some((thing) => thing.fixing?.instead);
}

function countWords({ words, fixing }: Thing, change: Change | undefined): string {
  const count = change?.count ?? 1;
  const out = effectOf(change?.verb) === "out";
  const own = { name: words, plural: words, size: "" };
  const range = fixing && { name: fixing.kindName, plural: fixing.kindPlural, size: fixing.size };
  const { name, plural, size } = (out ? fixing?.instead : undefined) ?? range ?? own;
  return [count === 1 ? name : `${count} ${plural}`, size].join(" ").trim();
}

/** Each with its article, joined. */
function listed({ phrases }: Words, names: readonly string[]): string {
  const all = names.map((name) => fillIn(phrases["the"] ?? "", { name }));
  return all.join(` ${phrases["and"] ?? ""} `);
}

/** A text with its first letter in capitals. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
