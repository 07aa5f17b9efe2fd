import { readFileSync } from "node:fs";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";

const folder = new URL("../../schemas/", import.meta.url);

/** The kinds of file a library may hold; a file's first key says which it is. */
export const fileKinds = ["range", "recipe", "car", "catalog"] as const;

/** A kind of library file. */
export type FileKind = (typeof fileKinds)[number];

const compiled = new Map<string, ValidateFunction>();

/** Files that stand outside a library: a plan, and what was found during the work. */
export type LooseKind = "plan" | "found";

/** The schemas that another one leans on, beside the shared one. */
const leansOn: Record<string, string[]> = { plan: ["car"], found: ["recipe"] };

/** The schema of one kind of file, compiled once. */
export function schemaOf(kind: FileKind | LooseKind): ValidateFunction {
  const schema = compiled.get(kind) ?? compile(kind);
  compiled.set(kind, schema);
  return schema;
}

function compile(kind: string): ValidateFunction {
  const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true, verbose: true });
  ajv.addSchema(load("shared"));
  for (const name of leansOn[kind] ?? []) ajv.addSchema(load(name));
  return ajv.compile(load(kind));
}

function load(name: string): object {
  return JSON.parse(readFileSync(new URL(`${name}.schema.json`, folder), "utf8"));
}
