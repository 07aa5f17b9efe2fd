/** The words of one language's words file. */
export interface Words {
  /** The language, as in the `lang` of HTML. */
  language: string;
  /** The words of the templates, from English. */
  texts: Record<string, string>;
  verbs: Record<string, string>;
  /** The sentence of a work verb that has none of its own. */
  work: string;
  sides: Record<string, string>;
  phases: Record<string, string>;
  /** Short pieces that the program puts together. */
  phrases: Record<string, string>;
  /** What the computed figures say of themselves, from English. */
  figures: Record<string, string>;
  /** The features for which steps are easily left out. */
  features: Record<string, string>;
}

/** Fills `{name}` places and closes the gaps that empty ones leave. */
export function fillIn(template: string, values: Readonly<Record<string, string>>): string {
  const filled = template.replaceAll(
    /\{([A-Za-z0-9-]+)\}/g,
    (_, name: string) => values[name] ?? "",
  );
  return filled
    .replaceAll(/ {2,}/g, " ")
    .replaceAll(/ ([.,])/g, "$1")
    .trim();
}
