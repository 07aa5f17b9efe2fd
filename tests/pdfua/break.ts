import { type Dict, type Pdf, type Value, catalog, dict, list, pagesOf } from "./objects.js";
import { type Element, elementsOf, rootOf } from "./structure.js";

/** A copy of a PDF's object tree that can be broken without harm to the other. */
export function copyOf(pdf: Pdf): Pdf {
  const { trailer, objects } = structuredClone({ trailer: pdf.trailer, objects: pdf.objects });
  return { ...pdf, trailer, objects, streams: { ...pdf.streams } };
}

/** The first elements of a type. */
export function some(pdf: Pdf, type: string, under?: string): Element[] {
  return elementsOf(pdf).filter(
    (one) => one.type === type && (under === undefined || one.parent?.type === under),
  );
}

/** The first element of a type, which must be there. */
export function first(pdf: Pdf, type: string, under?: string): Element {
  const [one] = some(pdf, type, under);
  if (!one) throw new Error(`no ${type} to break`);
  return one;
}

/** Gives the first element of a type another type. */
export function retype(pdf: Pdf, from: string, to: string, under?: string): void {
  first(pdf, from, under).dict["/S"] = `/${to}`;
}

/** Writes an entry into the first element of a type. */
export function enter(pdf: Pdf, type: string, key: string, value: Value): void {
  first(pdf, type).dict[key] = value;
}

/** Adds an object and gives its reference. */
export function add(pdf: Pdf, value: Dict, stream?: string): string {
  const ref = `${Object.keys(pdf.objects).length + 9000} 0 R`;
  pdf.objects[ref] = value;
  if (stream !== undefined) pdf.streams[ref] = Buffer.from(stream, "latin1");
  return ref;
}

/** Puts a caption among the kids of the first element of a type. */
export function caption(pdf: Pdf, type: string, at: number): void {
  const { dict: held, ref } = first(pdf, type);
  const kids = list(pdf, held["/K"]);
  held["/K"] = kids.toSpliced(at, 0, add(pdf, { "/S": "/Caption", "/P": ref }));
}

/** Adds operations to the first page; `FONT` stands for the name of one of its fonts. */
export function paint(pdf: Pdf, operations: string): void {
  const [page] = pagesOf(pdf);
  const fonts = dict(pdf, dict(pdf, page?.dict["/Resources"])["/Font"]);
  const text = operations.replaceAll("FONT", Object.keys(fonts)[0] ?? "");
  const ref = String(list(pdf, page?.dict["/Contents"])[0]);
  pdf.streams[ref] = Buffer.concat([
    pdf.streams[ref] ?? Buffer.alloc(0),
    Buffer.from(`\n${text}\n`),
  ]);
}

/** Adds an annotation to the first page, in no element. */
export function annotate(pdf: Pdf, annotation: Dict): void {
  const [page] = pagesOf(pdf);
  if (page) page.dict["/Annots"] = [add(pdf, { "/Type": "/Annot", ...annotation })];
}

/** Rewrites the metadata. */
export function rewrite(pdf: Pdf, from: RegExp | string, to: string): void {
  const ref = String(catalog(pdf)["/Metadata"]);
  const xmp = pdf.streams[ref]?.toString("utf8") ?? "";
  pdf.streams[ref] = Buffer.from(xmp.replaceAll(from, to));
}

/** Takes the language away. */
export function silence(pdf: Pdf): void {
  delete catalog(pdf)["/Lang"];
}

/** The fonts of the first page, as dictionaries. */
export function fontDicts(pdf: Pdf): Dict[] {
  const [page] = pagesOf(pdf);
  const named = dict(pdf, dict(pdf, page?.dict["/Resources"])["/Font"]);
  return Object.values(named).map((ref) => dict(pdf, ref));
}

/** The parts of the fonts of the first page that hold widths and glyphs. */
export function descendants(pdf: Pdf): Dict[] {
  return fontDicts(pdf).map((font) => dict(pdf, list(pdf, font["/DescendantFonts"])[0]));
}

/** Writes a role map. */
export function roles(pdf: Pdf, map: Dict): void {
  rootOf(pdf)["/RoleMap"] = map;
}
