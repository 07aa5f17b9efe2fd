import type { Diagnostic, Outcome } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { CarFile } from "../model/generated/car.js";
import type { CatalogFile } from "../model/generated/catalog.js";
import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";
import { type Library, shelfNames } from "../model/library.js";
import type { Source } from "../model/source.js";
import { type Chosen, withComputed } from "./computed.js";
import { explain } from "./explain.js";
import { rules } from "./rules.js";
import { type FileKind, type LooseKind, fileKinds, schemaOf } from "./schemas.js";

/**
 * Holds every file against its schema, sorts them into a typed library and holds that against the rules.
 * `complete` says whether every file of the library could be read.
 */
export function validate(
  sources: readonly Source[],
  complete = true,
  chosen: Chosen = {},
): Outcome<Library> {
  const diagnostics: Diagnostic[] = [];
  const library: Library = {
    ranges: [],
    recipes: [],
    cars: [],
    catalogs: [],
    catalog: { tools: {}, consumables: {}, roles: {}, wear: {}, messages: {} },
  };
  for (const source of sources) {
    const kind = kindOf(source);
    if (kind === undefined) diagnostics.push(noKind(source));
    else if (schemaOf(kind)(source.value))
      file(
        library,
        kind,
        source,
        withComputed(source.value, source, (one) => diagnostics.push(one), chosen),
      );
    else diagnostics.push(...explain(source, schemaOf(kind).errors ?? []));
  }
  const whole = complete && diagnostics.length === 0;
  for (const rule of rules)
    if (whole || !rule.whole) rule.run(library, (found) => diagnostics.push(found));
  return { value: library, diagnostics: inOrder(diagnostics, sources) };
}

/** By file and place, so that a file is read from top to bottom while it is mended. */
function inOrder(diagnostics: readonly Diagnostic[], sources: readonly Source[]): Diagnostic[] {
  const files = new Map(sources.map((source, i) => [source.file, i]));
  const rank = ({ span }: Diagnostic): number => (span && files.get(span.file)) ?? -1;
  return [...diagnostics].sort(
    (a, b) => rank(a) - rank(b) || (a.span?.start ?? 0) - (b.span?.start ?? 0),
  );
}

/** Holds one file against the schema of the kind it must be; the value is there when it passes. */
export function validateOne<T>(source: Source, kind: FileKind | LooseKind): Outcome<T> {
  const schema = schemaOf(kind);
  if (schema(source.value)) return { value: source.value as T, diagnostics: [] };
  return { diagnostics: explain(source, schema.errors ?? []) };
}

function firstKey(source: Source): string | undefined {
  const { value } = source;
  const isMap = typeof value === "object" && value !== null && !Array.isArray(value);
  return isMap ? Object.keys(value)[0] : undefined;
}

function kindOf(source: Source): FileKind | undefined {
  const key = firstKey(source);
  return fileKinds.find((kind) => kind === key);
}

function noKind(source: Source): Diagnostic {
  const key = firstKey(source);
  return {
    code: "file-kind",
    message: `The first key must say what this file is: ${fileKinds.join(", ")}.`,
    span: key === undefined ? source.spanOf([]) : source.keySpanOf([key]),
    hints: key === undefined ? [] : didYouMean(key, fileKinds),
    related: [],
  };
}

/** The schema has just vouched for the value, so its type may be asserted here and nowhere else. */
function file(library: Library, kind: FileKind, source: Source, value: unknown): void {
  if (kind === "range") library.ranges.push({ data: value as RangeFile, source });
  if (kind === "car") library.cars.push({ data: value as CarFile, source });
  if (kind === "recipe")
    library.recipes.push({ data: value as RecipeFile, source, folder: folderOf(source) });
  if (kind === "catalog") {
    library.catalogs.push({ data: value as CatalogFile, source });
    for (const shelf of shelfNames)
      Object.assign(library.catalog[shelf], (value as CatalogFile)[shelf]);
  }
}

function folderOf(source: Source): string {
  return source.file.split("/").slice(0, -1).join("/");
}
