import type { RangeFile } from "../../model/generated/range.js";
import { stateNeed, target } from "../references.js";
import { type Reference, type Rule, lookUp } from "../rule.js";
import { type Known, knownIn } from "../scope.js";

/** What a range asks for before hot work and while a joint is open is there to be asked for. */
export const safetyNames: Rule = {
  whole: true,
  run: (library, report) => {
    for (const range of library.ranges)
      lookUp(range.source, asked(knownIn(library, [range]), range.data), report);
  },
};

function asked(known: Known, range: RangeFile): Reference[] {
  const needs = (["hot-work", "structural"] as const).flatMap((key) =>
    (range[key]?.needs ?? []).flatMap((text, i) => stateNeed(known, text, [key, "needs", i])),
  );
  const compared = (range.structural?.compare ?? []).flatMap((name, i) =>
    target(known, name, ["structural", "compare", i]),
  );
  return [...needs, ...compared];
}
