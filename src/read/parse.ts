import { type Document, visit, isCollection, isMap, isNode, isScalar, parseDocument } from "yaml";
import type { Diagnostic, Outcome, Span } from "../diagnostics/diagnostic.js";
import type { Path, Source } from "../model/source.js";

const maxAliases = 100;

/** Reads YAML 1.2 (or JSON) text, keeping positions; every syntax error is reported, not the first only. */
export function parse(file: string, text: string): Outcome<Source> {
  const doc = parseDocument(text, { version: "1.2", prettyErrors: false, uniqueKeys: true });
  const diagnostics = doc.errors.map((error): Diagnostic => {
    const duplicate = error.code === "DUPLICATE_KEY";
    return {
      code: duplicate ? "yaml-duplicate-key" : "yaml-syntax",
      message: duplicate ? "This key is written twice in one map." : error.message,
      span: { file, start: error.pos[0], end: error.pos[1] },
      hints: duplicate ? ["Keep one of the two."] : ["Check the indentation and the quotes."],
      related: [],
    };
  });
  if (diagnostics.length > 0) return { diagnostics };
  const value = unfold(doc);
  if (value instanceof Error) return { diagnostics: [aliasFault(file, doc, value)] };
  return { value: source(file, text, doc, value), diagnostics };
}

function unfold(doc: Document.Parsed): unknown {
  try {
    return doc.toJS({ maxAliasCount: maxAliases });
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error));
  }
}

function aliasFault(file: string, doc: Document.Parsed, error: Error): Diagnostic {
  const bomb = error.message.startsWith("Excessive");
  return {
    code: "yaml-alias",
    message: bomb
      ? "The aliases of this file unfold to more than it may hold."
      : `The aliases of this file cannot be unfolded: ${error.message}.`,
    span: firstAlias(file, doc),
    hints: ["Write the values out instead of repeating them with aliases."],
    related: [],
  };
}

function firstAlias(file: string, doc: Document.Parsed): Span {
  let span: Span = { file, start: 0, end: 0 };
  visit(doc, {
    Alias: (_, { range }) => {
      if (range) span = { file, start: range[0], end: range[1] };
      return visit.BREAK;
    },
  });
  return span;
}

function source(file: string, text: string, doc: Document.Parsed, value: unknown): Source {
  const whole = { file, start: 0, end: 0 };
  const spanOf = (path: Path): Span => {
    for (let n = path.length; n >= 0; n--) {
      const node = n === 0 ? doc.contents : doc.getIn(path.slice(0, n), true);
      if (isNode(node) && node.range) return { file, start: node.range[0], end: node.range[1] };
    }
    return whole;
  };
  return {
    file,
    text,
    value,
    spanOf,
    keySpanOf: (path) => keySpan(file, doc, path) ?? spanOf(path),
  };
}

function keySpan(file: string, doc: Document.Parsed, path: Path): Span | undefined {
  const parentPath = path.slice(0, -1);
  const parent = parentPath.length === 0 ? doc.contents : doc.getIn(parentPath, true);
  if (!isCollection(parent) || !isMap(parent)) return undefined;
  const last = path.at(-1);
  const pair = parent.items.find((item) => isScalar(item.key) && item.key.value === last);
  const key = pair?.key;
  if (!isNode(key) || !key.range) return undefined;
  return { file, start: key.range[0], end: key.range[1] };
}
