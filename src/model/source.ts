import type { Span } from "../diagnostics/diagnostic.js";

/** The way to a value inside a document. */
export type Path = readonly (string | number)[];

/** Where a value was written: a file and the way to it. */
export interface Origin {
  file: string;
  path: Path;
}

/** One YAML or JSON file, read, with the positions of all its values kept. */
export interface Source {
  file: string;
  text: string;
  value: unknown;
  /** The span of the value at a path, or of the nearest value above it. */
  spanOf(path: Path): Span;
  /** The span of the key that ends a path. */
  keySpanOf(path: Path): Span;
}
