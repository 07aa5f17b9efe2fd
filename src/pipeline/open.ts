import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { UnreadablePath } from "../diagnostics/unreadable-path.js";
import type { Outcome } from "../diagnostics/diagnostic.js";
import { hasErrors } from "../diagnostics/print.js";
import type { CarFile } from "../model/generated/car.js";
import type { FoundFile } from "../model/generated/found.js";
import type { Filed } from "../model/library.js";
import type { Opened } from "../model/plan-file.js";
import type { Source } from "../model/source.js";
import type { Words } from "../model/words.js";
import { attachedText } from "../read/attached.js";
import { parse } from "../read/parse.js";
import { readLibrary, readOne } from "../read/read.js";
import { validateCar } from "../validate/validate-car.js";
import { validateFound } from "../validate/validate-found.js";
import { validate } from "../validate/validate.js";

/** The library that comes with the package. */
export const ownLibrary = fileURLToPath(new URL("../../recipes", import.meta.url));

const templates = fileURLToPath(new URL("../../templates/", import.meta.url));

/** The languages that the sheets can speak: one words file each. */
export function languages(): string[] {
  const found = readdirSync(templates).flatMap(
    (name) => /^words\.(\w+)\.yaml$/.exec(name)?.[1] ?? [],
  );
  return found.sort();
}

/**
 * Reads and validates a library, with the words of a language and the code that sets the fire watch: files
 * become typed recipes, ranges and cars.
 */
export function open(folder: string, language = "en", code?: string): Outcome<Opened> {
  if (!languages().includes(language))
    throw new UnreadablePath(
      `there is no language '${language}'; languages: ${languages().join(", ")}`,
    );
  const chosen = code === undefined ? {} : { "fire-watch": { code } };
  const read = readLibrary(folder);
  const sources = read.value ?? [];
  const { value, diagnostics } = validate(sources, !hasErrors(read.diagnostics), chosen);
  const words = readOne(`${templates}words.${language}.yaml`).value?.value as Words;
  const all = [...read.diagnostics, ...diagnostics];
  return value
    ? { value: { library: value, sources, words }, diagnostics: all }
    : { diagnostics: all };
}

/** Reads a car file and holds it against the ranges of a library. */
export function readCar(opened: Opened, path: string): Outcome<CarFile> & { sources: Source[] } {
  const read = readOne(path);
  if (!read.value) return { diagnostics: read.diagnostics, sources: [] };
  const { value, diagnostics } = validateCar(read.value, opened.library);
  return { ...(value ? { value } : {}), diagnostics, sources: [read.value] };
}

/** Reads a file of what was found and added during the work, and holds it against the catalogs of a library. */
export function readFound(
  opened: Opened,
  path: string,
): Outcome<Filed<FoundFile>> & { sources: Source[] } {
  const { value: source, diagnostics } = readOne(path);
  if (!source) return { diagnostics, sources: [] };
  const found = validateFound(source, opened.library);
  const value = found.value && { value: { data: found.value, source } };
  return { ...value, diagnostics: found.diagnostics, sources: [source] };
}

/** Reads the plan that a printed sheet or pack carries. */
export async function readPack(path: string): Promise<Outcome<Source>> {
  const text = await attachedText(path, "plan.json");
  if (text !== undefined) return parse(`${path}/plan.json`, text);
  const message = `'${path}' carries no plan.`;
  const hints = ["Every sheet that this tool prints carries its plan; take one as it was printed."];
  return { diagnostics: [{ code: "no-plan", message, hints, related: [] }] };
}

/** Reads one file with the positions of its values. */
export const readFile = readOne;
