import type { LaidSheet } from "../model/page.js";

type Outline = PDFKit.PDFOutline;

/** Makes a bookmark of every heading, each under the nearest one of a higher level, and of each sheet. */
export function bookmarks(doc: PDFKit.PDFDocument, sheets: readonly LaidSheet[]): void {
  let at = 0;
  for (const { title, pages } of sheets) {
    const several = sheets.length > 1;
    const open: { level: number; outline: Outline }[] = [];
    const add = (level: number, text: string, y: number): void => {
      while ((open.at(-1)?.level ?? -1) >= level) open.pop();
      const parent = open.at(-1)?.outline ?? doc.outline;
      const options = { expanded: level < 2, top: y, left: doc.page.width };
      open.push({ level, outline: parent.addItem(text, options) });
    };
    for (const [i, page] of pages.entries()) {
      doc.switchToPage(at++);
      if (i === 0 && several) add(0, title, 0);
      for (const { level, text, y } of page.headings) add(level, text, y);
    }
  }
}
