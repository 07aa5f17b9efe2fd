/** The sentences of a text; a colon ends one as a full stop does (part D, D16). */
export function sentencesOf(text: string): string[] {
  return text
    .split(/(?<=[.!?:])\s+/)
    .map((one) => one.trim())
    .filter((one) => one !== "");
}

/**
 * How many words a sentence holds: a hyphenated word, a number, a symbol and a figure are one word each (D18);
 * a text in brackets is one word of its sentence (D17).
 */
export function wordsIn(sentence: string): number {
  return sentence
    .replaceAll(/\{[^}]*\}|\([^)]*\)/g, "x")
    .split(/\s+/)
    .filter((word) => /[\p{L}\d]/u.test(word)).length;
}

/** A text in brackets is counted as a sentence of its own as well (D17). */
export function bracketsIn(sentence: string): string[] {
  return [...sentence.matchAll(/\(([^)]*)\)/g)].map(([, inside = ""]) => inside);
}
