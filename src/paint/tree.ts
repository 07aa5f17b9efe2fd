import type { Content, Tag } from "../model/page.js";
import type { Fields } from "./fields.js";

/** The place of a box or a line on a page. */
export interface FieldPlace {
  page: number;
  x: number;
  y: number;
  w: number;
  h: number;
}

/** What was painted for each piece of content: its marked runs, and where it is a field, its place. */
export type Marked = Map<Content, { run: PDFKit.PDFStructureContent; field?: FieldPlace }>;

/** Grows the structure tree from the tags, with the runs that were painted for them. */
export function growTree(
  doc: PDFKit.PDFDocument,
  root: Tag,
  marked: Marked,
  fields: Fields | undefined,
): void {
  const top = elementOf(doc, root, marked, fields);
  doc.addStructure(top);
  top.end();
}

function elementOf(
  doc: PDFKit.PDFDocument,
  tag: Tag,
  marked: Marked,
  fields: Fields | undefined,
): PDFKit.PDFStructureElement {
  const element = doc.struct(tag.type, tag.alt === undefined ? {} : { alt: tag.alt });
  attributes(element, tag, fields !== undefined);
  for (const child of tag.children) {
    if ("of" in child) {
      const painted = marked.get(child);
      if (painted) element.add(painted.run);
      if (painted?.field) fields?.add(element, tag, painted.field);
    } else if (isWorthKeeping(child, marked)) element.add(elementOf(doc, child, marked, fields));
  }
  return element;
}

/** What pdfkit keeps of an element; its types leave this out. */
type Element = PDFKit.PDFStructureElement & { dictionary: { data: Record<string, unknown> } };

/** Cells are kept even when nothing is printed in them, so that every row has all its columns. */
function isWorthKeeping(tag: Tag, marked: Marked): boolean {
  return (
    ["TD", "TH"].includes(tag.type) ||
    tag.children.some((child) =>
      "of" in child ? marked.has(child) : isWorthKeeping(child, marked),
    )
  );
}

/** Printed fields say what they are; fields that can be filled in say it themselves. */
function attributes(
  element: PDFKit.PDFStructureElement,
  { scope, span, field, alt }: Tag,
  fillable: boolean,
): void {
  const { data } = (element as Element).dictionary;
  const table = { ...(scope ? { Scope: scope } : {}), ...(span ? { ColSpan: span } : {}) };
  if (scope !== undefined || span !== undefined) data["A"] = { O: "Table", ...table };
  if (field === undefined || fillable) return;
  const role = field === "box" ? { Role: "cb", checked: "off" } : { Role: "tv" };
  data["A"] = { O: "PrintField", ...role, Desc: new String(alt ?? "") };
}
