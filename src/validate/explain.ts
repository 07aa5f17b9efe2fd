import type { ErrorObject } from "ajv/dist/2020.js";
import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { didYouMean, nearest } from "../diagnostics/nearest.js";
import type { Path, Source } from "../model/source.js";
import { alternatives, anyOf, reason } from "./reasons.js";

/** Turns ajv's errors into diagnostics in plain words, each thing told once. */
export function explain(source: Source, errors: readonly ErrorObject[]): Diagnostic[] {
  const places = [...new Set(errors.map((error) => error.instancePath))];
  const seen = new Set<string>();
  return places
    .flatMap((place) => atPlace(source, place, errors))
    .filter((d) => {
      const key = `${d.span?.start} ${d.message}`;
      return !seen.has(key) && seen.add(key);
    });
}

/** Where several forms can stand, the form that was meant speaks; if none was, all are named at once. */
function atPlace(source: Source, place: string, errors: readonly ErrorObject[]): Diagnostic[] {
  const here = errors.filter((error) => error.instancePath === place);
  const forms = here.filter((error) => error.keyword === "anyOf");
  if (forms.length === 0) return here.map((error) => one(source, error));
  const hints = forms.flatMap(describe);
  const other = here.filter(({ keyword }) => ![...alternatives, "anyOf"].includes(keyword));
  const deeper = errors.some((error) => error.instancePath.startsWith(`${place}/`));
  if (other.length > 0 || deeper) return other.map((error) => one(source, error, hints));
  const plain = here.filter((error) => error.keyword !== "anyOf");
  return [tell(source, pathOf(source, place), anyOf(plain), [...plain.flatMap(near), ...hints])];
}

function one(source: Source, error: ErrorObject, more: readonly string[] = []): Diagnostic {
  const path = pathOf(source, error.instancePath);
  if (error.keyword === "additionalProperties") return unknownKey(source, error, path);
  const described = error.keyword === "required" ? [] : [...describe(error), ...more];
  return tell(source, path, reason(error), [...near(error), ...described]);
}

function tell(source: Source, path: Path, why: string, hints: readonly string[]): Diagnostic {
  return {
    code: "schema",
    message: `${placeOf(path)} ${why}.`,
    span: source.spanOf(path),
    hints: [...new Set(hints)],
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

/** The allowed value that a mistyped one may have meant: 'Nm' for 'N·m', 'warnin' for 'warning'. */
function near({ keyword, params, data }: ErrorObject): string[] {
  if (keyword !== "enum" || typeof data !== "string") return [];
  const allowed = [params["allowedValues"]].flat().map(String);
  const same = allowed.find((one) => letters(one) === letters(data));
  const name = same ?? nearest(data, allowed);
  return name === undefined ? [] : [`Did you mean '${name}'?`];
}

function letters(text: string): string {
  return text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
}

function describe(error: ErrorObject): string[] {
  const text = error.parentSchema?.["description"];
  return typeof text === "string" ? [text] : [];
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
