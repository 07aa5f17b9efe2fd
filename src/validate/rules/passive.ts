import type { Rule } from "../rule.js";
import { wordingRule } from "./language/wording.js";

/** Words that open a clause which says what is so, not what to do: 'until the bubble is centred'. */
const states = /\b(?:if|when|where|while|unless|until|once|as|that|which|who|what|whether)\b/i;

const irregular =
  "built|cut|done|drawn|driven|found|given|ground|held|hung|kept|laid|made|put|seen|sent|set|shown|struck|taken|thrown|torn|undone|wound";
const notParticiples = "crooked|hundred|jagged|naked|ragged|rugged";
const passive = new RegExp(
  String.raw`\b(?:is|are|was|were|be|been|being)(?: (?:not|never|all|both|then|again|\w+ly))? (?!(?:${notParticiples})\b)(?:\w+[^e\W]ed|${irregular})\b`,
  "i",
);

/** A command says what to do, never what is done by nobody: ASD-STE100 3.6 (part D, D10). */
export const passiveVoice: Rule = wordingRule(
  "passive",
  (sentence) =>
    [passiveIn(sentence) ?? []].flat().map((words) => ({
      words,
      message: `'${words}' does not say who does it.`,
      hint: "Begin with the command: 'Clean …'. Of a state say 'must stay clean'.",
    })),
  ["do", "avoid"],
);

/** The first passive of a sentence, after its condition and before a clause that only says what is so. */
export function passiveIn(sentence: string): string | undefined {
  const opensSo = sentence.search(states) === 0;
  const [main = ""] = sentence.slice(opensSo ? sentence.lastIndexOf(",") + 1 : 0).split(states);
  return passive.exec(main)?.[0];
}
