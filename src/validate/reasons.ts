import type { ErrorObject } from "ajv/dist/2020.js";

/** What ajv found wrong with a value, in plain words that follow the value's name. */
export function reason(error: ErrorObject): string {
  const { keyword, params } = error;
  if (keyword === "required") return `lacks '${params["missingProperty"]}'`;
  if (alternatives.includes(keyword)) return anyOf([error]);
  const limit = String(params["limit"]);
  if (smallest.includes(keyword))
    return limit === "1" ? "must not be empty" : `must have at least ${limit} entries`;
  if (keyword === "maxItems") return `must have at most ${limit} entries`;
  if (keyword === "uniqueItems") return "holds an entry twice";
  if (keyword === "pattern")
    return `is ${shown(error.data)}, which is not written in the form that must stand here`;
  const bound = bounds[keyword];
  if (bound) return `is ${shown(error.data)}, but must be ${bound} ${limit}`;
  return `is ${shown(error.data)}, but ${error.message ?? "is not as the schema asks"}`;
}

/** The keywords that each name a form the whole value could have had. */
export const alternatives = ["type", "const", "enum"];

const smallest = ["minItems", "minProperties", "minLength"];
const bounds: Record<string, string> = {
  minimum: "at least",
  maximum: "at most",
  exclusiveMinimum: "more than",
};

/** One reason for a value that has none of several forms. */
export function anyOf(errors: readonly ErrorObject[]): string {
  const forms = [...new Set(errors.flatMap(formsOf))];
  const lists = forms.filter((form) => form.startsWith("one of"));
  const all = [...forms.filter((form) => !lists.includes(form)), ...lists];
  return `is ${shown(errors[0]?.data)}, but must be ${all.join(" or ")}`;
}

function formsOf({ keyword, params }: ErrorObject): string[] {
  if (keyword === "const") return [shown(params["allowedValue"])];
  if (keyword === "enum") return [`one of: ${[params["allowedValues"]].flat().join(", ")}`];
  return [params["type"]].flat().map((type) => typeNames[String(type)] ?? String(type));
}

const typeNames: Record<string, string> = {
  object: "a map",
  array: "a list",
  string: "text",
  integer: "a whole number",
  number: "a number",
  boolean: "true or false",
};

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? "nothing";
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}
