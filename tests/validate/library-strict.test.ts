import { expect, it } from "vitest";
import { codes } from "../../src/diagnostics/codes.js";
import { open } from "../../src/index.js";
import { laidOut } from "../cases/read-case.js";

it("the library that comes with the package has no warning", () => {
  const { value, diagnostics } = open("recipes");
  expect(value?.library.recipes.length).toBeGreaterThan(30);
  expect(diagnostics.map(({ code, span }) => `${code} ${span?.file ?? ""}`)).toEqual([]);
});

it("a warning of the language does not keep a library from being used", () => {
  const files = [
    {
      path: "tiny/strip/lamp.yaml",
      text: "recipe: lamp\nname: Lamp\nthings: { lamp: lamp }\nwork:\n  - wipe: lamp\n    say: Wipe it carefully.\n",
    },
  ];
  const opened = laidOut({ files, without: [] }, (folder) => open(folder));
  expect(opened.diagnostics.map(({ code }) => [code, codes[code][0]])).toEqual([
    ["vague-word", "warning"],
  ]);
  expect(opened.value).toBeDefined();
});
