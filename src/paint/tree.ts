import type { Tag } from "../model/page.js";
import type { Marked } from "./paint.js";

/** Grows the structure tree from the tags, with the runs that were painted for them. */
export function growTree(doc: PDFKit.PDFDocument, root: Tag, marked: Marked): void {
  const top = elementOf(doc, root, marked);
  doc.addStructure(top);
  top.end();
}

function elementOf(doc: PDFKit.PDFDocument, tag: Tag, marked: Marked): PDFKit.PDFStructureElement {
  const element = doc.struct(tag.type, tag.alt === undefined ? {} : { alt: tag.alt });
  attributes(element, tag);
  for (const child of tag.children) {
    if ("of" in child) {
      const run = marked.get(child);
      if (run !== undefined) element.add(run);
    } else if (isWorthKeeping(child, marked)) element.add(elementOf(doc, child, marked));
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

function attributes(element: PDFKit.PDFStructureElement, { scope, span, field, alt }: Tag): void {
  const { data } = (element as Element).dictionary;
  const table = { ...(scope ? { Scope: scope } : {}), ...(span ? { ColSpan: span } : {}) };
  if (scope !== undefined || span !== undefined) data["A"] = { O: "Table", ...table };
  if (field === undefined) return;
  const role = field === "box" ? { Role: "cb", checked: "off" } : { Role: "tv" };
  data["A"] = { O: "PrintField", ...role, Desc: new String(alt ?? "") };
}
