const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Words with which a condition, a manner or a place opens ahead of its command. */
const openers = set(
  "if when where while unless until before after as once with without for from to in into on onto at by during",
);

/** Other words that join or place things; after a comma or 'and' they begin no command. */
const joiners = set(
  "of off over under up down out back along across against between past round through behind beside than then or and nor but so",
);

/** Words that open a clause of its own, in which 'is' and 'must' belong. */
const clauses = set("that which who what whether");

/** Words that stand before a thing; no command begins with one, and what follows a command often does. */
const pointers = set(
  "the a an this these those each every all both any no nobody nothing none it its they their them he she you your there some one two three four five six",
);

/** Words that can only open a command, whatever follows. */
const orders = set(
  "never always do keep let make put take bring get go be ensure look avoid remember please",
);

/** Words with which a condition follows a command at once: 'Stop when …'. */
const conditions = set("if when while unless until before after");

const particles = set("up down out off on in back");
const requirements = set("must shall may");
const beAndMust = set("is are was were be must shall should will can may has have");
const namesInIng = set("bring swing sling ring string spring");

/** The sentence after the condition or place that it opens with: 'If it sticks, pull it' gives 'pull it'. */
export function afterCondition(sentence: string): string {
  if (!openers.has(firstOf(sentence))) return sentence;
  const rests = [...sentence.matchAll(/,\s+/g)].map((at) => sentence.slice(at.index + 1));
  return rests.find((rest) => !isSmall(firstOf(rest))) ?? rests[0] ?? "";
}

/** Whether a sentence tells what to do: no list of verbs, only the starts that no command has. */
export function isCommand(sentence: string): boolean {
  const words = wordsOf(afterCondition(sentence));
  const [first] = words;
  if (first === undefined) return openers.has(firstOf(sentence));
  if (pointers.has(first) || clauses.has(first) || /^[\d{]/.test(first) || isDoing(first))
    return false;
  const opened = words.findIndex((word) => openers.has(word) || clauses.has(word));
  const main = opened < 0 ? words : words.slice(0, opened);
  return !main.slice(1, 4).some((word) => beAndMust.has(word));
}

/** Whether a sentence that should describe commands; surer than `isCommand`, since 'Wax burns' begins like one. */
export function isOrder(sentence: string): boolean {
  const [first = "", second = ""] = wordsOf(afterCondition(sentence));
  const hasObject = pointers.has(second) || /^[\d{]/.test(second);
  return isCommand(sentence) && (orders.has(first) || hasObject || conditions.has(second));
}

/** Whether a sentence says what must or may not be so, which may follow a command in the same step. */
export function isRequirement(sentence: string): boolean {
  return wordsOf(sentence).some((word) => requirements.has(word));
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
    return !isSmall(first) && (pointers.has(object) || /^[\d{]/.test(object));
  }).length;
}

/** Whether a word joins, places or conditions: after a thing it says that no further word of its name follows. */
export function endsName(word: string): boolean {
  return [openers, joiners, clauses, beAndMust].some((all) => all.has(word));
}

function isSmall(word: string): boolean {
  return (
    word === "" || [openers, joiners, clauses, pointers, beAndMust].some((all) => all.has(word))
  );
}

function isDoing(word: string): boolean {
  return word.endsWith("ing") && !namesInIng.has(word);
}

function firstOf(text: string): string {
  return wordsOf(text)[0] ?? "";
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\d{][\p{L}\d'’}-]*/gu) ?? [];
}
