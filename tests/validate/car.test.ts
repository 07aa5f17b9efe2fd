import { expect, it } from "vitest";
import { open } from "../../src/index.js";
import { parse } from "../../src/read/parse.js";
import { validateCar } from "../../src/validate/validate-car.js";
import { small } from "../plans.js";

const said = (text: string): string[] => {
  const library = open(small).value?.library;
  const source = parse("car.yaml", text).value;
  if (!library || !source) throw new Error("the test's own text cannot be read");
  return validateCar(source, library).diagnostics.map((d) => `${d.code} ${d.message}`);
};

it("a car file that names what its range has passes", () => {
  const found = "found: [{ fixing: trim-screw, at: left, present: 1, note: three lost }]";
  expect(said(`car: red\nrange: tiny\nfitted: { seats: powered }\n${found}\n`)).toEqual([]);
});

it.each([
  ["range: tinny", "unknown-name This library has no range 'tinny'."],
  [
    "range: tiny\nfitted: { seats: heated }",
    "unknown-option The option 'seats' has no value 'heated'.",
  ],
  [
    "range: tiny\nfound: [{ part: sead, note: gone }]",
    "unknown-name This range has no part 'sead'.",
  ],
  [
    "range: tiny\nfound: [{ fixing: trim-screw, present: 5, note: one more }]",
    "count-mismatch The car has 5 of 'trim-screw', the range at most 4.",
  ],
  ["range: 7", "schema 'range' is 7, but must be text."],
])("a car file with %j is refused", (text, words) => {
  expect(said(`car: red\n${text}\n`)).toEqual([words]);
});
