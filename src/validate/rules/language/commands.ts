/** Words that open a clause or a place and never a command. */
const links =
  "if when where while unless until before after as once with without for from to in into on onto at by of off over under up down out back along across against between past round through behind beside from than then or and nor but so that which who".split(
    " ",
  );

/** Words that stand before a thing and never are a command. */
const pointers =
  "the a an this that these those each every all both any no nobody nothing none it its they their them he she you your there some one two three four five six".split(
    " ",
  );

const linkWords = new Set(links);
const pointerWords = new Set(pointers);
const particles = new Set(["up", "down", "out", "off", "on", "in", "back"]);
const beAndMust = /^(?:is|are|was|were|be|must|should|shall|will|can|may|has|have)$/;
const nouns = new Set(["bring", "swing", "sling", "ring", "string", "spring"]);

/** The sentence after the condition or place that it opens with: 'If it sticks, pull it' gives 'pull it'. */
export function afterCondition(sentence: string): string {
  const [first = ""] = wordsOf(sentence);
  if (!linkWords.has(first)) return sentence;
  return /,\s+(.*)$/s.exec(sentence)?.[1] ?? "";
}

/** Whether a sentence tells what to do: no list of verbs, only the starts that no command has. */
export function isCommand(sentence: string): boolean {
  const words = wordsOf(afterCondition(sentence));
  const [first] = words;
  if (first === undefined) return linkWords.has(wordsOf(sentence)[0] ?? "");
  if (pointerWords.has(first) || /^[\d{]/.test(first) || isDoing(first)) return false;
  return !words
    .slice(1, 4)
    .some((word, i) => beAndMust.test(word) && isOpen(words.slice(0, i + 1)));
}

/** Whether a sentence says what must or may not be so, which may follow a command in the same step. */
export function isRequirement(sentence: string): boolean {
  return wordsOf(sentence).some((word) => word === "must" || word === "may");
}

/**
 * How many commands a sentence holds. A further command is a word after a comma or 'and' that has an object:
 * 'lift it', 'cap both ends', 'push down the lid'.
 */
export function commandsIn(sentence: string): number {
  return isCommand(sentence) ? 1 + furtherCommands(afterCondition(sentence)) : 0;
}

function furtherCommands(sentence: string): number {
  const parts = sentence.split(/,\s+(?:and\s+|then\s+)?|\s+and\s+(?:then\s+)?|\s+then\s+/).slice(1);
  return parts.filter((part) => {
    const [first = "", second = "", third = ""] = wordsOf(part);
    const object = particles.has(second) ? third : second;
    return !isFunctionWord(first) && (pointerWords.has(object) || /^[\d{]/.test(object));
  }).length;
}

function isFunctionWord(word: string): boolean {
  return linkWords.has(word) || pointerWords.has(word) || beAndMust.test(word) || word === "";
}

function isDoing(word: string): boolean {
  return word.endsWith("ing") && !nouns.has(word);
}

/** Whether no word has opened a clause of its own, in which 'is' and 'must' belong. */
function isOpen(before: readonly string[]): boolean {
  return !before.some((word) => linkWords.has(word) || word === "what" || word === "whether");
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\d{][\p{L}\d'’}-]*/gu) ?? [];
}
