import { codes } from "./codes.js";
import type { Diagnostic, Span } from "./diagnostic.js";

/** The text of a file, by its name. */
export type TextOf = (file: string) => string | undefined;

/** Line and column of an offset, both from 1. */
export function lineColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset).split("\n");
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

/** A diagnostic in full: place, severity, words, the line it points at, related places and hints. */
export function format(diagnostic: Diagnostic, textOf: TextOf): string {
  const { code, message, span, hints, related } = diagnostic;
  const head = span ? `${placeOf(span, textOf)}: ` : "";
  return [
    `${head}${codes[code][0]} [${code}]: ${message}`,
    ...(span ? frame(span, textOf) : []),
    ...related.map((one) => `  ${placeOf(one.span, textOf)}: ${one.label}`),
    ...hints.map((hint) => `  hint: ${hint}`),
  ].join("\n");
}

function placeOf(span: Span, textOf: TextOf): string {
  const text = textOf(span.file);
  if (text === undefined) return span.file;
  const { line, column } = lineColumn(text, span.start);
  return `${span.file}:${line}:${column}`;
}

function frame(span: Span, textOf: TextOf): string[] {
  const text = textOf(span.file);
  if (text === undefined) return [];
  const { line, column } = lineColumn(text, span.start);
  const source = text.split("\n")[line - 1] ?? "";
  const gutter = `${line} | `;
  const width = Math.max(1, Math.min(span.end - span.start, source.length - column + 1));
  return [
    `  ${gutter}${source}`,
    `  ${" ".repeat(gutter.length + column - 1)}${"^".repeat(width)}`,
  ];
}

/** A diagnostic as `check --json` gives it. */
export function toJson(diagnostic: Diagnostic, textOf: TextOf): object {
  const at = (span: Span | undefined): object => {
    const text = span && textOf(span.file);
    return span && text !== undefined ? { file: span.file, ...lineColumn(text, span.start) } : {};
  };
  const { code, message, span, hints, related } = diagnostic;
  const others = related.map((one) => ({ ...at(one.span), label: one.label }));
  return { code, severity: codes[code][0], ...at(span), message, hints, related: others };
}

/** How grave a diagnostic is, from its code. */
export function severityOf({ code }: Diagnostic): "error" | "warning" {
  return codes[code][0];
}

/** Whether any of these is an error. */
export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => severityOf(diagnostic) === "error");
}
