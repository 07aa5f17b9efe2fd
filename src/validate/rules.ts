import type { Rule } from "./rule.js";
import { bareFigure } from "./rules/bare-figure.js";
import { blanks } from "./rules/blanks.js";
import { carCounts } from "./rules/car-counts.js";
import { carNames } from "./rules/car-names.js";
import { commandInNote } from "./rules/command-in-note.js";
import { computedCritical } from "./rules/computed-critical.js";
import { conditionLast } from "./rules/condition-last.js";
import { contractions } from "./rules/contraction.js";
import { implausible } from "./rules/implausible.js";
import { ingForms } from "./rules/ing-form.js";
import { limitInNote } from "./rules/limit-in-note.js";
import { longSentence } from "./rules/long-sentence.js";
import { noWords } from "./rules/no-words.js";
import { noArticle } from "./rules/no-article.js";
import { notACommand } from "./rules/not-a-command.js";
import { nounCluster } from "./rules/noun-cluster.js";
import { oneMask } from "./rules/one-mask.js";
import { options } from "./rules/options.js";
import { passiveVoice } from "./rules/passive.js";
import { rangeNames } from "./rules/range-names.js";
import { recipeNames } from "./rules/recipe-names.js";
import { releases } from "./rules/releases.js";
import { safetyNames } from "./rules/safety-names.js";
import { semicolon } from "./rules/semicolon.js";
import { shopNames } from "./rules/shop-names.js";
import { sparks } from "./rules/sparks.js";
import { twice } from "./rules/twice.js";
import { twoInstructions } from "./rules/two-instructions.js";
import { vagueWord } from "./rules/vague-word.js";
import { wordList } from "./rules/word-list.js";

/** Every rule of a library, in the order in which it speaks. */
export const rules: readonly Rule[] = [
  twice,
  rangeNames,
  safetyNames,
  recipeNames,
  shopNames,
  carNames,
  carCounts,
  options,
  releases,
  oneMask,
  sparks,
  implausible,
  computedCritical,
  bareFigure,
  blanks,
  noWords,
  longSentence,
  twoInstructions,
  notACommand,
  conditionLast,
  vagueWord,
  wordList,
  limitInNote,
  commandInNote,
  passiveVoice,
  ingForms,
  semicolon,
  contractions,
  nounCluster,
  noArticle,
];
