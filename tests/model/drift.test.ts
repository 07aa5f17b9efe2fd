import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { verbs } from "../../src/model/verbs.js";
import { kinds, typesOf } from "../tools/generate-types.mjs";

it.each(kinds)("types of %s are what its schema generates", async (kind) => {
  expect(readFileSync(`src/model/generated/${kind}.ts`, "utf8")).toBe(await typesOf(kind));
});

it("the recipe schema knows every verb of the table and no other", () => {
  const schema = JSON.parse(readFileSync("schemas/recipe.schema.json", "utf8"));
  const keys = Object.keys(schema.$defs.step.properties);
  expect(keys.slice(0, Object.keys(verbs).length)).toEqual(Object.keys(verbs));
});

it("every pair of verbs names each other", () => {
  for (const [name, { pair }] of Object.entries(verbs))
    if (pair !== undefined) expect(verbs[pair]?.pair).toBe(name);
});
