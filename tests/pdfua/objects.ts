import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { run } from "../pdf.js";

/** A PDF object as qpdf prints it: names begin with `/`, texts with `u:` or `b:`, references end in ` R`. */
export type Value = null | boolean | number | string | Value[] | Dict;

/** A PDF dictionary. */
export interface Dict {
  [key: string]: Value | undefined;
}

/** The object tree of a PDF, which a test may break before it asks the rules. */
export interface Pdf {
  header: string;
  trailer: Dict;
  objects: Record<string, Value>;
  streams: Record<string, Buffer>;
}

interface Printed {
  qpdf: [unknown, Record<string, { value?: Value; stream?: { dict: Dict; data: string } }>];
}

/** Reads the object tree of a PDF, streams decoded, as qpdf finds it. */
export function readPdf(bytes: Buffer): Pdf {
  const folder = mkdtempSync(join(tmpdir(), "countback-objects-"));
  const file = join(folder, "sheet.pdf");
  writeFileSync(file, bytes);
  const json = run("qpdf", [
    "--json=2",
    "--json-key=qpdf",
    "--json-stream-data=inline",
    "--decode-level=generalized",
    file,
  ]);
  rmSync(folder, { recursive: true });
  const pdf: Pdf = {
    header: bytes.subarray(0, bytes.indexOf(10)).toString("latin1").trim(),
    trailer: {},
    objects: {},
    streams: {},
  };
  for (const [key, { value, stream }] of Object.entries((JSON.parse(json) as Printed).qpdf[1])) {
    const ref = key.replace("obj:", "");
    if (key === "trailer") pdf.trailer = asDict(value);
    else pdf.objects[ref] = stream ? stream.dict : (value ?? null);
    if (stream) pdf.streams[ref] = Buffer.from(stream.data, "base64");
  }
  return pdf;
}

/** Whether a value is a reference to an object. */
export function isRef(value: Value | undefined): value is string {
  return typeof value === "string" && /^\d+ \d+ R$/.test(value);
}

/** What a value is once references are followed. */
export function get(pdf: Pdf, value: Value | undefined): Value {
  return isRef(value) ? get(pdf, pdf.objects[value]) : (value ?? null);
}

/** A value as a dictionary; empty where it is none. */
export function dict(pdf: Pdf, value: Value | undefined): Dict {
  return asDict(get(pdf, value));
}

/** A value as a list; a single value is a list of one. */
export function list(pdf: Pdf, value: Value | undefined): Value[] {
  const found = get(pdf, value);
  return found === null ? [] : Array.isArray(found) ? found : [value ?? null];
}

/** The text of a text string; undefined where it is none. */
export function text(pdf: Pdf, value: Value | undefined): string | undefined {
  const found = get(pdf, value);
  if (typeof found !== "string") return undefined;
  if (found.startsWith("u:")) return found.slice(2);
  return found.startsWith("b:") ? Buffer.from(found.slice(2), "hex").toString("latin1") : undefined;
}

/** The catalog. */
export function catalog(pdf: Pdf): Dict {
  return dict(pdf, pdf.trailer["/Root"]);
}

/** A page and the reference by which others name it. */
export interface PageObject {
  ref: string;
  dict: Dict;
  content: Buffer;
}

/** All pages in order. */
export function pagesOf(pdf: Pdf, node: Value | undefined = catalog(pdf)["/Pages"]): PageObject[] {
  const { "/Kids": kids, "/Contents": contents } = dict(pdf, node);
  if (kids !== undefined) return list(pdf, kids).flatMap((kid) => pagesOf(pdf, kid));
  const parts = list(pdf, contents).map((part) => pdf.streams[String(part)] ?? Buffer.alloc(0));
  return [{ ref: String(node), dict: dict(pdf, node), content: Buffer.concat(parts) }];
}

/** Every dictionary of the file, at any depth. */
export function dictsOf(pdf: Pdf): Dict[] {
  return [...Object.values(pdf.objects), pdf.trailer].flatMap(within);
}

function within(value: Value | undefined): Dict[] {
  if (Array.isArray(value)) return value.flatMap(within);
  if (typeof value !== "object" || value === null) return [];
  return [value, ...Object.values(value).flatMap(within)];
}

function asDict(value: Value | undefined): Dict {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? value : {};
}
