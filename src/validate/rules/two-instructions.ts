import { type Report, type Rule, spanInside } from "../rule.js";
import { commandsIn } from "./language/commands.js";
import { type Told, toldIn } from "./language/told.js";

const most = 2;

/**
 * A step is one thing to do, since it has one box: ASD-STE100 5.2.
 * Two commands of one sentence are taken as one go of the hands ('Undo it and lift it out'); three are not,
 * nor are two sentences of which each commands. 'Stop.' before a hold only calls the reader to it.
 */
export const twoInstructions: Rule = {
  whole: false,
  run: (library, report) => {
    for (const told of toldIn(library)) if (told.use === "do") judge(told, report);
  },
};

function judge({ sentences, source, path }: Told, report: Report): void {
  const commands = sentences.filter((one) => one !== "Stop." && commandsIn(one) > 0);
  const many = commands.filter((one) => commandsIn(one) > most);
  const [sentence = commands[1]] = many;
  if (sentence === undefined) return;
  const count = commands.reduce((sum, one) => sum + commandsIn(one), 0);
  report({
    code: "two-instructions",
    message: `One box stands for ${count} things to do; a tick does not say which of them is done.`,
    span: spanInside(source, path, sentence),
    hints: ["Write a step for each, with its own verb."],
    related: [],
  });
}
