import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

const seen = "Write what is seen, felt or measured when it is right.";
const condition = "Write the condition first: 'If …, …'.";
const number = "Write the number, or give it as a figure with its source.";
const named = "Name every one that is meant.";

/** Words that two readers take in two ways, each with what to write in its place. */
const vague: readonly (readonly [words: string, hint: string])[] = [
  ["securely|properly|correctly|firmly|thoroughly|adequately|appropriately|suitably", seen],
  ["carefully|with care|gently|cautiously", "Write what the hands do, or what must not happen."],
  ["appropriate|adequate|suitable|proper|sufficient|reasonable|acceptable", seen],
  ["(?:as|if|where|when) (?:required|needed|necessary|possible|appropriate)", condition],
  ["some|several|a few|a bit|a little|slightly|approximately|roughly|about \\d+", number],
  ["etc|and so on|and the like|or similar", named],
  [
    "usually|normally|generally|should",
    "Write what must be done, and the condition if there is one.",
  ],
];

const patterns = vague.map(
  ([words, hint]) => [new RegExp(String.raw`(?<![\w-])(?:${words})(?![\w-])`, "gi"), hint] as const,
);

/** A text says what can be seen or measured, never how well to do it: part D, D14. */
export const vagueWord: Rule = wordingRule("vague-word", (sentence) =>
  vagueWords(sentence).map(({ word, hint }) => ({
    words: word,
    message: `'${word}' leaves the reader to decide.`,
    hint,
  })),
);

/** The vague words of a sentence, each with what to write in its place. */
export function vagueWords(sentence: string): { word: string; hint: string }[] {
  return patterns.flatMap(([pattern, hint]) =>
    [...sentence.matchAll(pattern)].map(([word]) => ({ word, hint })),
  );
}
