import type { Code } from "./codes.js";

/** A stretch of one file, as character offsets; line and column are worked out when printing. */
export interface Span {
  file: string;
  start: number;
  end: number;
}

/** One thing found wrong, as data. */
export interface Diagnostic {
  code: Code;
  message: string;
  span?: Span;
  hints: string[];
  related: { span: Span; label: string }[];
}

/** A stage's value with what it found on the way; the value is absent when nothing could be made. */
export interface Outcome<T> {
  value?: T;
  diagnostics: Diagnostic[];
}
