import { type Rule, spanInside } from "../rule.js";
import { toldIn } from "./language/told.js";

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
export const passiveVoice: Rule = {
  whole: false,
  run: (library, report) => {
    for (const { use, sentences, source, path } of toldIn(library))
      for (const sentence of use === "do" || use === "avoid" ? sentences : []) {
        const found = passiveIn(sentence);
        if (found !== undefined)
          report({
            code: "passive",
            message: `'${found}' does not say who does it.`,
            span: spanInside(source, path, found),
            hints: ["Begin with the command: 'Clean …'. Of a state say 'must stay clean'."],
            related: [],
          });
      }
  },
};

/** The first passive of a sentence, after its condition and before a clause that only says what is so. */
export function passiveIn(sentence: string): string | undefined {
  const opensSo = sentence.search(states) === 0;
  const [main = ""] = sentence.slice(opensSo ? sentence.lastIndexOf(",") + 1 : 0).split(states);
  return passive.exec(main)?.[0];
}
