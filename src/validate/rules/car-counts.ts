import { fixingsOf } from "../inventory.js";
import type { Rule } from "../rule.js";

/** No more fixings are found on a car than its range has places for. */
export const carCounts: Rule = {
  whole: true,
  run: ({ cars, ranges }, report) => {
    for (const { data, source } of cars) {
      const range = ranges.find((one) => one.data.range === data.range);
      const fixings = range ? fixingsOf(range.data) : [];
      for (const [i, { fixing, present = 0 }] of (data.found ?? []).entries()) {
        const count = fixings.find((one) => one.name === fixing)?.value.count ?? Infinity;
        const full = typeof count === "number" ? count : Math.max(...Object.values(count));
        if (present > full)
          report({
            code: "count-mismatch",
            message: `The car has ${present} of '${fixing ?? ""}', the range at most ${full}.`,
            span: source.spanOf(["found", i, "present"]),
            hints: ["Write those that are too many as `extra`, or mend the number."],
            related: [],
          });
      }
    }
  },
};
