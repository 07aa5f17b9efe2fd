import type { Source } from "../../model/source.js";
import { type Report, type Rule, spanInside } from "../rule.js";
import { stepsOf } from "../../model/recipe-steps.js";
import { type PlacedText, factsOf, textsOf } from "../texts.js";

/** A number with a unit goes through a figure, which has a source; it is never typed into a text. */
export const bareFigure: Rule = {
  whole: false,
  run: ({ recipes }, report) => {
    for (const { data, source } of recipes)
      for (const placed of stepsOf(data)) {
        const named = "Write it under 'figures' with its source, and its name here: '{name}'.";
        const given = "Give the fact a 'figure' with its source in place of the 'value'.";
        for (const text of textsOf(placed)) judge(source, text, named, report);
        for (const text of factsOf(placed)) judge(source, text, given, report);
      }
  },
};

function judge(source: Source, { text, path }: PlacedText, hint: string, report: Report): void {
  for (const found of bareFigures(text))
    report({
      code: "bare-figure",
      message: `'${found}' stands in the text without a source.`,
      span: spanInside(source, path, found),
      hints: [hint],
      related: [],
    });
}

const whole = String.raw`(?<![\p{L}\d.,/])(?:\d+ )?\d+`;
const number = String.raw`${whole}(?:[.,/]\d+)?`;
const end = String.raw`(?![\p{L}\d])`;
const signs = "mm|cm|µm|N·m|Nm|lbf·ft|min|°C|bar|lx|V|Ω|A|h";
const words =
  "s|inch|inches|millimetres?|minutes?|hours?|seconds?|days?|degrees|amperes?|volts?|ohms?";
const pattern = new RegExp(
  [
    `${number} ?(?:${signs})${end}`,
    `${number} (?:${words})${end}`,
    // 'in' is a word as well: after a plain number it is a unit only where the phrase ends.
    String.raw`${whole}[./]\d+ in${end}`,
    String.raw`${whole} in(?=[.,;:)]|$)`,
  ].join("|"),
  "gu",
);

/** The numbers with a unit in a text: '8 mm', '5/16 in', '10 minutes'; not 'M10', 'class 8.8' or '4 screws'. */
export function bareFigures(text: string): string[] {
  return [...text.matchAll(pattern)].map((match) => match[0]);
}
