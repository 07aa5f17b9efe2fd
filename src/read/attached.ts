import { readFileSync } from "node:fs";
import { UnreadablePath } from "../diagnostics/unreadable-path.js";

/** The text of a file that is attached to a PDF, or nothing where it carries none of that name. */
export async function attachedText(path: string, name: string): Promise<string | undefined> {
  const { getDocument } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  const task = getDocument({ data: bytesOf(path), verbosity: 0 });
  try {
    const document = await task.promise;
    const files = (await document.getAttachments()) as Record<
      string,
      { content: Uint8Array }
    > | null;
    const content = files?.[name]?.content;
    return content && Buffer.from(content).toString("utf8");
  } catch {
    throw new UnreadablePath(`'${path}' is not a PDF that can be read`);
  } finally {
    await task.destroy();
  }
}

function bytesOf(path: string): Uint8Array {
  try {
    return new Uint8Array(readFileSync(path));
  } catch {
    throw new UnreadablePath(`cannot read ${path}: there is no such file`);
  }
}
