import type { CarFile } from "../../model/generated/car.js";
import type { RangeFile } from "../../model/generated/range.js";
import { namesOf } from "../../model/names.js";
import { fixingsOf, positionsOf } from "../inventory.js";
import { type Reference, type Rule, lookUp } from "../rule.js";

/** A car is of a range that is there, and what was found on it is part of that range. */
export const carNames: Rule = {
  whole: true,
  run: ({ cars, ranges }, report) => {
    const known = ranges.map((range) => range.data.range);
    for (const { data, source } of cars) {
      const range = ranges.find((one) => one.data.range === data.range);
      const lacks = "This library has no range";
      lookUp(source, [{ name: data.range, path: ["range"], known, lacks }], report);
      if (range) lookUp(source, foundNames(data, range.data), report);
    }
  },
};

function foundNames({ found = [] }: CarFile, range: RangeFile): Reference[] {
  const fixings = fixingsOf(range).map((fixing) => fixing.name);
  const all = namesOf(range);
  return found.flatMap(({ fixing, part, at, as, awkward = [] }, i) => {
    const one = (
      key: string,
      name: string | undefined,
      known: readonly string[],
      lacks: string,
    ): Reference[] => (name === undefined ? [] : [{ name, path: ["found", i, key], known, lacks }]);
    return [
      ...one("fixing", fixing, fixings, "This range has no fixing"),
      ...one("part", part, Object.keys(range.parts), "This range has no part"),
      ...one("as", as, Object.keys(range.kinds), "This range has no kind of fastener"),
      ...one("at", at, positionsOf(range), "This range has no position"),
      ...awkward.map((name, k) => ({
        name,
        path: ["found", i, "awkward", k],
        known: all,
        lacks: "Nothing in this range is called",
      })),
    ];
  });
}
