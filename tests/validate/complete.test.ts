import { expect, it } from "vitest";
import { parse } from "../../src/read/parse.js";
import { readLibrary } from "../../src/read/read.js";
import { validate } from "../../src/validate/validate.js";
import { small } from "../plans.js";

const bare = `recipe: lamp
name: Cabin lamp
things: { lamp: cabin lamp }
work:
  - drill: lamp
    say: Drill to 8 mm.
`;
const lamp = parse("tiny/strip/lamp.yaml", bare).value;
const rest = (readLibrary(small).value ?? []).filter((one) => !one.file.endsWith("range.yaml"));
const sources = [...rest, ...(lamp ? [lamp] : [])];
const codes = (complete: boolean): string[] =>
  validate(sources, complete).diagnostics.map((d) => d.code);

it("a library whose range could not be read is spared the names it would have held", () => {
  expect(codes(false)).toEqual(["bare-figure"]);
});

it("a library that has no range is not", () => {
  expect(codes(true)).toContain("unknown-name");
});

it("what is found is told file by file, from top to bottom", () => {
  const places = validate(sources, true).diagnostics.map((d) => [d.span?.file, d.span?.start]);
  const ordered = sources.flatMap(({ file }) => {
    const mine = places.filter(([where]) => where === file);
    return mine.sort(([, a = 0], [, b = 0]) => Number(a) - Number(b));
  });
  expect(places.length).toBeGreaterThan(3);
  expect(places).toEqual(ordered);
});
