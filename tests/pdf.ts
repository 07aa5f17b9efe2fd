import { execFileSync } from "node:child_process";
import { PDFParse } from "pdf-parse";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { type Opened, type PlanFile, type PrintOptions, print } from "../src/index.js";

/** Prints a plan's checklist and gives its bytes. */
export async function printed(
  opened: Opened,
  plan: PlanFile,
  options: Partial<PrintOptions> = {},
): Promise<Buffer> {
  const all = {
    paper: "a4" as const,
    large: false,
    draft: false,
    html: false,
    fillable: false,
    sheets: ["checklist"],
    ...options,
  };
  const { value, diagnostics } = await print(opened, plan, all);
  const [first] = value ?? [];
  if (!first) throw new Error(diagnostics.map((d) => d.message).join("\n"));
  return first.bytes;
}

/** The text of a PDF as pdf-parse reads it, page by page. */
export async function textByPdfParse(bytes: Buffer): Promise<string[]> {
  const parser = new PDFParse({ data: new Uint8Array(bytes) });
  const { pages } = await parser.getText();
  await parser.destroy();
  return pages.map((page) => page.text);
}

/** Runs a command that reads a PDF from a file and gives what it prints. */
export function run(command: string, args: readonly string[]): string {
  return execFileSync(command, args, { encoding: "utf8", maxBuffer: 1 << 26 });
}

/** Whether a command is installed; `.ci/run` installs all that the tests know. */
export function has(command: string): boolean {
  try {
    execFileSync("sh", ["-c", `command -v ${command}`], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** A node of the structure tree as pdf.js reads it. */
export interface Node {
  role: string;
  alt?: string;
  children: Node[];
}

/** The structure tree of every page, in order. */
export async function treesOf(bytes: Buffer): Promise<Node[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const document = await task.promise;
  const trees: Node[] = [];
  for (let n = 1; n <= document.numPages; n++) {
    const page = await document.getPage(n);
    trees.push((await page.getStructTree()) as Node);
  }
  await task.destroy();
  return trees;
}

/** All nodes below a node, in reading order. */
export function flat(node: Node): Node[] {
  return [node, ...(node.children ?? []).flatMap(flat)];
}

/** Text with every space taken out, so that line breaks do not matter. */
export function tight(text: string): string {
  return text.replaceAll(/\s+/g, "");
}

/** A form field as pdf.js reads it. */
export interface Field {
  id: string;
  name: string;
  type: string;
  value: string;
  /** The number of its page, from 0. */
  page: number;
  /** Left, lower, right and upper edge in points from the lower left corner of its page. */
  rect: [number, number, number, number];
  multiline?: boolean;
}

/** The form fields of a PDF in the order of their names, which is the order of reading. */
export async function fieldsOf(bytes: Uint8Array): Promise<Field[]> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const found = (await (await task.promise).getFieldObjects()) ?? {};
  await task.destroy();
  const fields = Object.values(found).flat() as Field[];
  return fields.toSorted((a, b) => (a.name < b.name ? -1 : 1));
}
