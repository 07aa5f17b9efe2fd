import type { LaidSheet } from "../model/page.js";

/** Numbers the pages of each sheet from one, with the sheet's name before the number. */
export function pageLabels(doc: PDFKit.PDFDocument, sheets: readonly LaidSheet[]): void {
  const inner = doc as PDFKit.PDFDocument & { _root: { data: Record<string, unknown> } };
  let first = 0;
  const numbers = sheets.flatMap(({ name, pages }) => {
    const at = first;
    first += pages.length;
    return [at, { S: "D", P: new String(`${name} `) }];
  });
  inner._root.data["PageLabels"] = { Nums: numbers };
}
