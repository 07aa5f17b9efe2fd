import { readFileSync } from "node:fs";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";

const folder = new URL("../../schemas/", import.meta.url);

/** The kinds of file a library may hold; a file's first key says which it is. */
export const fileKinds = ["range", "recipe", "car", "catalog"] as const;

/** A kind of library file. */
export type FileKind = (typeof fileKinds)[number];

/** The compiled schema of each kind of file. */
export function compileSchemas(): Record<FileKind, ValidateFunction> {
  const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true, verbose: true });
  ajv.addSchema(load("shared"));
  const compiled = fileKinds.map((kind) => [kind, ajv.compile(load(kind))] as const);
  return Object.fromEntries(compiled) as Record<FileKind, ValidateFunction>;
}

function load(name: string): object {
  return JSON.parse(readFileSync(new URL(`${name}.schema.json`, folder), "utf8"));
}
