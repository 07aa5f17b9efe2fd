// Writes src/model/generated/*.ts from schemas/*.json; tests/model/drift.test.ts holds the two together.
import { compileFromFile } from "json-schema-to-typescript";
import { mkdirSync, writeFileSync } from "node:fs";

export const kinds = ["range", "recipe", "car", "catalog", "plan", "found"];

/** The TypeScript text of one schema. */
export async function typesOf(kind) {
  return compileFromFile(`schemas/${kind}.schema.json`, {
    cwd: "schemas",
    bannerComment: "// Generated from schemas/ by `npm run types`; edit the schema.",
    additionalProperties: false,
    format: false,
  });
}

if (process.argv[1] === import.meta.filename) {
  mkdirSync("src/model/generated", { recursive: true });
  for (const kind of kinds) writeFileSync(`src/model/generated/${kind}.ts`, await typesOf(kind));
}
