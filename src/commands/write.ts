import { accessSync, constants, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Printed } from "../model/printing.js";
import { UnreadablePath } from "../diagnostics/unreadable-path.js";

/** Refuses a folder that is missing or cannot be written to. */
export function mustBeFolder(folder: string): void {
  try {
    if (!statSync(folder).isDirectory()) throw new UnreadablePath(`'${folder}' is not a folder`);
    accessSync(folder, constants.W_OK);
  } catch (error) {
    if (error instanceof UnreadablePath) throw error;
    throw new UnreadablePath(`the folder '${folder}' is missing or cannot be written to`);
  }
}

/** Writes files beside their place and renames them: never half a file, never one of two. */
export function writeAll(folder: string, printed: readonly Printed[]): string[] {
  const files = printed.map(({ name, bytes }) => ({ bytes, path: join(folder, name) }));
  const part = (path: string): string => `${path}.part`;
  try {
    for (const { path, bytes } of files) writeFileSync(part(path), bytes);
  } catch {
    for (const { path } of files) rmSync(part(path), { force: true });
    throw new UnreadablePath(`nothing could be written to '${folder}'`);
  }
  for (const { path } of files) renameSync(part(path), path);
  return files.map(({ path }) => path);
}
