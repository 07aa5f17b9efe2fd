import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

const names = "(?:any|every|no|some)?thing|bearing|bushing|ring|spring|string";
const things = "the|a|an|this|that|these|those|each|every|all|both|any|it|its|them|their|your";
const ingForm = new RegExp(
  String.raw`\b(?:by|while|when|before|after|without|for|from|instead of) (?!(?:${names})\b)\w+ing (?:${things})\b`,
  "gi",
);

/**
 * A verb is a command or has somebody who does it: 'by turning the nut' has neither (part D, D11).
 * Only a form with an object is taken, since 'before welding' and 'the wiring' are names of work and of things.
 */
export const ingForms: Rule = wordingRule("ing-form", (sentence) =>
  ingFormsIn(sentence).map((words) => ({
    words,
    message: `'${words}' does not say who does it.`,
    hint: "Write a command, 'Turn …', or who does it: 'while you turn …'.",
  })),
);

/** The verbs in -ing of a sentence that have an object. */
export function ingFormsIn(sentence: string): string[] {
  return [...sentence.matchAll(ingForm)].map(([found]) => found);
}
