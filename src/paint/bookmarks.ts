import type { Page } from "../model/page.js";

type Outline = PDFKit.PDFOutline;

/** Makes a bookmark of every heading, each under the nearest one of a higher level. */
export function bookmarks(doc: PDFKit.PDFDocument, pages: readonly Page[]): void {
  const open: { level: number; outline: Outline }[] = [];
  pages.forEach((page, i) => {
    doc.switchToPage(i);
    for (const { level, text, y } of page.headings) {
      while ((open.at(-1)?.level ?? 0) >= level) open.pop();
      const parent = open.at(-1)?.outline ?? doc.outline;
      const options = { expanded: level < 2, top: y, left: doc.page.width };
      open.push({ level, outline: parent.addItem(text, options) });
    }
  });
}
