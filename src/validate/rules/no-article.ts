import { type Rule, spanInside } from "../rule.js";
import { afterCondition, endsName, isCommand } from "./language/commands.js";
import { adjectives, namesIn, runsIn } from "./language/names.js";
import { toldIn } from "./language/told.js";

const prepositions = new Set(
  "of off over under up down out back along across against past round through behind beside from in into on onto at by with without for before after".split(
    " ",
  ),
);

/** 'A kind of clip', 'clip by clip' and 'from clip to clip' need no article. */
const idioms =
  /\b(?:kind|type|sort|size|make|class) of \S+|(?:\bfrom )?\b(\w+) (?:by|to|after|for) \1\b/gi;

/**
 * A part, a fixing or a tool has its article: no telegram style, ASD-STE100 2.3 (part D, D9).
 * A name is found only straight after a preposition or a command's verb, and only where it ends there:
 * 'from seat.' is telegram style, 'at seat height' may not be.
 */
export const noArticle: Rule = {
  whole: false,
  run: (library, report) => {
    const things = thingsOf(namesIn(library));
    for (const { use, sentences, source, path } of toldIn(library))
      for (const sentence of use === "hazard" ? [] : sentences)
        for (const found of bareNamesIn(sentence, use === "do" || use === "avoid", things))
          report({
            code: "no-article",
            message: `'${found}' leaves out the article.`,
            span: spanInside(source, path, found),
            hints: ["Write 'the', 'a', 'each' or a number before the thing."],
            related: [],
          });
  },
};

/** The singular names of parts, fixings and tools, and the last word alone of those of parts and fixings; a 'set of' things is none. */
export function thingsOf(
  names: readonly { name: string; of: "part" | "fixing" | "tool" | "other" }[],
): ReadonlySet<string> {
  const written = names.flatMap(({ name, of }) => {
    const [run = []] = of === "other" ? [] : runsIn(name);
    const whole = run.join(" ");
    if (of === "tool") return name.includes(`${whole} of `) ? [] : [whole];
    return [whole, ...run.slice(-1)];
  });
  const singular = written.filter((name) => name !== "" && !/[^s]s$/.test(name));
  return new Set(singular.map((name) => name.toLowerCase()).filter((name) => !endsName(name)));
}

/** The names of things in a sentence that stand without an article, with the word before them. */
export function bareNamesIn(
  sentence: string,
  commands: boolean,
  things: ReadonlySet<string>,
): string[] {
  const plain = sentence.replaceAll(idioms, "|");
  const words = wordsOf(plain);
  const begins =
    commands && isCommand(plain) ? words.length - wordsOf(afterCondition(plain)).length : -1;
  return words.flatMap((word, i) =>
    i === begins || prepositions.has(word.toLowerCase()) ? nameFrom(words, i, things) : [],
  );
}

/** The word at a place with the name of a thing that follows it, where one ends there. */
function nameFrom(words: readonly string[], at: number, things: ReadonlySet<string>): string[] {
  const first = words.findIndex((word, i) => i > at && !adjectives.has(word.toLowerCase()));
  const ends = first < 0 ? [] : [3, 2, 1].map((length) => first + length);
  return ends
    .filter((end) => things.has(words.slice(first, end).join(" ").toLowerCase()))
    .filter(
      (end) => /^(?!\p{L})/u.test(words[end] ?? "") || endsName((words[end] ?? "").toLowerCase()),
    )
    .slice(0, 1)
    .map((end) => words.slice(at, end).join(" "));
}

function wordsOf(sentence: string): string[] {
  return sentence.match(/[\p{L}\d][\p{L}\d'’-]*|[^\s\p{L}\d]/gu) ?? [];
}
