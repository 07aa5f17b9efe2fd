import { readFileSync, readdirSync, realpathSync } from "node:fs";
import { join, relative, sep } from "node:path";
import type { Diagnostic, Outcome } from "../diagnostics/diagnostic.js";
import type { Source } from "../model/source.js";
import { UnreadablePath } from "../diagnostics/unreadable-path.js";
import { parse } from "./parse.js";

/** Reads every YAML file under a library folder, in an order that no file system decides. */
export function readLibrary(folder: string): Outcome<Source[]> {
  const root = realOf(folder);
  const files = listFiles(root).filter((file) => file.endsWith(".yaml"));
  if (files.length === 0) throw new UnreadablePath(`${folder} holds no recipes (no .yaml file)`);
  const sources: Source[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const path of files) {
    const file = join(folder, relative(root, path)).split(sep).join("/");
    const outcome = leaves(root, path) ? outside(file) : parse(file, textOf(path));
    if (outcome.value) sources.push(outcome.value);
    diagnostics.push(...outcome.diagnostics);
  }
  return { value: sources, diagnostics };
}

/** Reads one file named on the command line. */
export function readOne(path: string): Outcome<Source> {
  return parse(path, textOf(path));
}

function textOf(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch (error) {
    throw new UnreadablePath(`cannot read ${path}: ${reasonOf(error)}`);
  }
}

function realOf(folder: string): string {
  try {
    return realpathSync(folder);
  } catch (error) {
    throw new UnreadablePath(`cannot read ${folder}: ${reasonOf(error)}`);
  }
}

function reasonOf(error: unknown): string {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  if (code === "ENOENT") return "there is no such file or folder";
  if (code === "EACCES") return "permission denied";
  if (code === "EISDIR") return "it is a folder";
  if (code === "ENOTDIR") return "it is not a folder";
  return String(code ?? error);
}

function listFiles(folder: string): string[] {
  const entries = entriesOf(folder).sort((a, b) => (a.name < b.name ? -1 : 1));
  return entries.flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? listFiles(path) : [path];
  });
}

function entriesOf(folder: string) {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    throw new UnreadablePath(`cannot read ${folder}: ${reasonOf(error)}`);
  }
}

function leaves(root: string, path: string): boolean {
  return !realOf(path).startsWith(root + sep);
}

function outside(file: string): Outcome<Source> {
  const diagnostic: Diagnostic = {
    code: "outside-library",
    message: `${file} is a link that leads out of the library.`,
    span: { file, start: 0, end: 0 },
    hints: ["Copy the file into the library."],
    related: [],
  };
  return { diagnostics: [diagnostic] };
}
