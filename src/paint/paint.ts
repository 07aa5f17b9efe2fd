import PDFDocument from "pdfkit";
import type { Content, Face, Item, LaidSheet, Page } from "../model/page.js";
import { bookmarks } from "./bookmarks.js";
import { escapeMetadata } from "./metadata.js";
import { growTree } from "./tree.js";

/** What the file says of itself beside its title. */
export interface About {
  revision: string;
  fontFile: (face: Face) => Buffer;
}

/** The marked runs of each piece of content, in the order of painting. */
export type Marked = Map<Content, PDFKit.PDFStructureContent>;

const faces: readonly Face[] = ["regular", "bold", "italic", "wide", "wide-bold"];
const creation = new Date(0);

/** Paints a laid sheet as a tagged PDF; the same sheet gives the same bytes. */
export async function paint(sheet: LaidSheet, about: About): Promise<Buffer> {
  const { title, lang, pages, tree } = sheet;
  const options: Omit<PDFKit.PDFDocumentOptions, "font" | "subset"> & {
    font: null;
    subset: "PDF/UA";
  } = {
    pdfVersion: "1.7",
    subset: "PDF/UA",
    tagged: true,
    displayTitle: true,
    lang,
    autoFirstPage: false,
    bufferPages: true,
    font: null,
    info: {
      Title: title,
      Creator: "Countback",
      Producer: "Countback",
      Keywords: `revision ${about.revision}`,
      CreationDate: creation,
    },
  };
  const doc = new PDFDocument(options as unknown as PDFKit.PDFDocumentOptions);
  escapeMetadata(doc);
  for (const face of faces) doc.registerFont(face, about.fontFile(face));
  const bytes = collect(doc);
  const marked: Marked = new Map();
  for (const page of pages) paintPage(doc, sheet, page, marked);
  bookmarks(doc, pages);
  growTree(doc, tree, marked);
  doc.end();
  return bytes;
}

function collect(doc: PDFKit.PDFDocument): Promise<Buffer> {
  const chunks: Buffer[] = [];
  return new Promise((done, fail) => {
    doc.on("data", (chunk: Buffer) => chunks.push(chunk));
    doc.on("end", () => done(Buffer.concat(chunks)));
    doc.on("error", fail);
  });
}

/** Paints one page; runs of items with the same content share one mark. */
function paintPage(
  doc: PDFKit.PDFDocument,
  { width, height, watermark }: LaidSheet,
  page: Page,
  marked: Marked,
): void {
  doc.addPage({ size: [width, height], margin: 0 });
  doc.markContent("Artifact", { type: "Layout" });
  if (watermark !== "") drawWatermark(doc, watermark, width, height);
  let open: Content | undefined;
  for (const item of page.items) {
    const content = "content" in item ? item.content : undefined;
    if (content !== open) {
      doc.endMarkedContent();
      mark(doc, content, marked);
      open = content;
    }
    draw(doc, item);
  }
  doc.endMarkedContent();
}

function mark(doc: PDFKit.PDFDocument, content: Content | undefined, marked: Marked): void {
  if (!content) {
    doc.markContent("Artifact", { type: "Layout" });
    return;
  }
  const run = doc.markStructureContent(content.of.type);
  const before = marked.get(content);
  if (before) before.push(run);
  else marked.set(content, run);
}

function draw(doc: PDFKit.PDFDocument, item: Item): void {
  switch (item.is) {
    case "text":
      doc.font(item.face).fontSize(item.size).fillColor(item.color);
      doc.text(item.text, item.x, item.y, { lineBreak: false, baseline: "alphabetic" });
      break;
    case "fill":
      doc.rect(item.x, item.y, item.w, item.h).fill(item.color);
      break;
    case "line":
      doc.lineWidth(item.width);
      if (item.dashed) doc.dash(2.4, { space: 1.8 });
      doc.moveTo(item.x, item.y).lineTo(item.x2, item.y2).stroke(item.color);
      doc.undash();
      break;
    case "field":
      drawField(doc, item);
      break;
    case "path":
      doc
        .save()
        .translate(item.x, item.y)
        .scale(item.scale)
        .path(item.d)
        .fill(item.color)
        .restore();
  }
}

function drawField(doc: PDFKit.PDFDocument, { x, y, w, h, content }: Item & { is: "field" }): void {
  if (content.of.field === "box") {
    doc
      .lineWidth(0.9)
      .rect(x + 0.45, y + 0.45, w - 0.9, h - 0.9)
      .stroke("#000000");
    return;
  }
  doc
    .lineWidth(0.6)
    .moveTo(x, y + h)
    .lineTo(x + w, y + h)
    .stroke("#000000");
}

/** One word across the page, light enough to read the sheet through it. */
function drawWatermark(doc: PDFKit.PDFDocument, word: string, width: number, height: number): void {
  const size = width / (word.length * 0.62);
  doc.save().rotate(-52, { origin: [width / 2, height / 2] });
  doc.font("bold").fontSize(size).fillColor("#D4D4D4");
  const across = doc.widthOfString(word);
  doc.text(word, (width - across) / 2, height / 2 + size * 0.35, {
    lineBreak: false,
    baseline: "alphabetic",
  });
  doc.restore();
}
