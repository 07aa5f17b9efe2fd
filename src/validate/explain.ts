import type { ErrorObject } from "ajv/dist/2020.js";
import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { Path, Source } from "../model/source.js";

/** Turns ajv's errors into diagnostics in plain words, one per place. */
export function explain(source: Source, errors: readonly ErrorObject[]): Diagnostic[] {
  const useful = errors.filter((error) => !isNoise(error, errors));
  const seen = new Set<string>();
  return useful
    .map((error) => one(source, error))
    .filter((d) => {
      const key = `${d.span?.start} ${d.message}`;
      return !seen.has(key) && seen.add(key);
    });
}

/** An `anyOf` says less than its branches where a branch went deeper; its branches say less where none did. */
function isNoise(error: ErrorObject, all: readonly ErrorObject[]): boolean {
  if (error.keyword === "anyOf") return deeper(error, all);
  const parent = all.find(
    (other) => other.keyword === "anyOf" && error.schemaPath.startsWith(`${other.schemaPath}/`),
  );
  const sibling =
    parent ?? all.find((o) => o.keyword === "anyOf" && o.instancePath === error.instancePath);
  return sibling !== undefined && error.instancePath === sibling.instancePath && error !== sibling;
}

function deeper(error: ErrorObject, all: readonly ErrorObject[]): boolean {
  return all.some((other) => other.instancePath.startsWith(`${error.instancePath}/`));
}

function one(source: Source, error: ErrorObject): Diagnostic {
  const path = pathOf(source, error.instancePath);
  if (error.keyword === "additionalProperties") return unknownKey(source, error, path);
  return {
    code: "schema",
    message: `${placeOf(path)} ${reason(error)}.`,
    span: source.spanOf(path),
    hints: describe(error),
    related: [],
  };
}

function unknownKey(source: Source, error: ErrorObject, path: Path): Diagnostic {
  const key = String(error.params["additionalProperty"]);
  const known = Object.keys(error.parentSchema?.["properties"] ?? {});
  return {
    code: "unknown-key",
    message: `'${key}' is not a key that can stand here.`,
    span: source.keySpanOf([...path, key]),
    hints: didYouMean(key, known),
    related: [],
  };
}

function reason(error: ErrorObject): string {
  const { params } = error;
  if (error.keyword === "required") return `lacks '${params["missingProperty"]}'`;
  if (error.keyword === "type") return `must be ${words(params["type"])}, not ${shown(error.data)}`;
  if (error.keyword === "enum")
    return `is ${shown(error.data)}, but must be one of: ${list(params["allowedValues"])}`;
  if (error.keyword === "const") return `must be ${shown(params["allowedValue"])}`;
  const limit = limits[error.keyword];
  if (limit) return `is ${shown(error.data)}, but must be ${limit} ${String(params["limit"])}`;
  if (error.keyword === "pattern")
    return `is ${shown(error.data)}, which is not written in the form that must stand here`;
  if (error.keyword === "minItems" || error.keyword === "maxItems")
    return `must have ${error.keyword === "minItems" ? "at least" : "at most"} ${String(params["limit"])} items`;
  if (error.keyword === "anyOf")
    return `is ${shown(error.data)}, which is of none of the forms that can stand here`;
  return `is ${shown(error.data)}, but ${error.message ?? "is not as the schema asks"}`;
}

const limits: Record<string, string> = {
  minimum: "at least",
  maximum: "at most",
  exclusiveMinimum: "more than",
};

function describe(error: ErrorObject): string[] {
  const text = error.parentSchema?.["description"];
  return typeof text === "string" ? [text] : [];
}

function words(type: unknown): string {
  const names: Record<string, string> = {
    object: "a map",
    array: "a list",
    string: "text",
    integer: "a whole number",
    boolean: "true or false",
  };
  return [type]
    .flat()
    .map((t) => names[String(t)] ?? `a ${String(t)}`)
    .join(" or ");
}

function list(values: unknown): string {
  return Array.isArray(values) ? values.join(", ") : String(values);
}

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? "nothing";
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}

function placeOf(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return "The file";
  return typeof last === "number"
    ? `Item ${last + 1} of '${path.at(-2) ?? "the list"}'`
    : `'${last}'`;
}

/** JSON Pointer to path; a figure is an index only where the value there is a list. */
function pathOf(source: Source, pointer: string): Path {
  const parts = pointer
    .split("/")
    .slice(1)
    .map((p) => p.replaceAll("~1", "/").replaceAll("~0", "~"));
  let value = source.value;
  return parts.map((part) => {
    const key = Array.isArray(value) ? Number(part) : part;
    value = (value as Record<string | number, unknown> | undefined)?.[key];
    return key;
  });
}
