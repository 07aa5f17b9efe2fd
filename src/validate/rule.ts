import type { Diagnostic, Span } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { Library } from "../model/library.js";
import type { Path, Source } from "../model/source.js";

/** Takes what a rule finds. */
export type Report = (diagnostic: Diagnostic) => void;

/** Something that every library must keep to, beyond the form of its files. */
export interface Rule {
  /** Whether it compares files, and so says nothing useful of a library of which a file is missing. */
  whole: boolean;
  run(library: Library, report: Report): void;
}

/** A name written in a file, with the names that it may be. */
export interface Reference {
  name: string;
  path: Path;
  known: Iterable<string>;
  /** What is missing where the name is not known: 'No catalog holds the tool'. */
  lacks: string;
}

/** Reports each reference whose name is not known, with the nearest that is. */
export function lookUp(source: Source, references: readonly Reference[], report: Report): void {
  for (const { name, path, known, lacks } of references) {
    const names = new Set(known);
    if (names.has(name)) continue;
    report({
      code: "unknown-name",
      message: `${lacks} '${name}'.`,
      span: source.spanOf(path),
      hints: didYouMean(name, names),
      related: [],
    });
  }
}

/** The span of a stretch of text inside a value, or of the value where quoting or folding hides it. */
export function spanInside(source: Source, path: Path, text: string): Span {
  const span = source.spanOf(path);
  const at = source.text.slice(span.start, span.end).indexOf(text);
  if (at < 0) return span;
  return { file: span.file, start: span.start + at, end: span.start + at + text.length };
}
