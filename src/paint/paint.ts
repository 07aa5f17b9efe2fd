import PDFDocument from "pdfkit";
import type { Content, Face, LaidSheet, Page, Tag } from "../model/page.js";
import { type Attachment, attach } from "./attach.js";
import { bookmarks } from "./bookmarks.js";
import { draw, drawWatermark } from "./draw.js";
import { Fields } from "./fields.js";
import { escapeMetadata } from "./metadata.js";
import { pageLabels } from "./labels.js";
import { type Marked, growTree } from "./tree.js";

/** What a file says of itself, and what goes into it beside its sheets. */
export interface About {
  title: string;
  revision: string;
  /** Boxes and lines become fields that can be filled in on a screen. */
  fillable: boolean;
  attachments: readonly Attachment[];
  fontFile: (face: Face) => Buffer;
}

const faces: readonly Face[] = ["regular", "bold", "italic", "wide", "wide-bold"];

/** The one date that is written into files, so that the same input gives the same bytes. */
export const creation = new Date(0);

/** Paints laid sheets one after the other into a tagged PDF; the same sheets give the same bytes. */
export async function paint(sheets: readonly LaidSheet[], about: About): Promise<Buffer> {
  const doc = newDocument(sheets[0]?.lang ?? "en", about);
  escapeMetadata(doc);
  for (const face of faces) doc.registerFont(face, about.fontFile(face));
  const bytes = collect(doc);
  const marked: Marked = new Map();
  for (const sheet of sheets) for (const page of sheet.pages) paintPage(doc, sheet, page, marked);
  bookmarks(doc, sheets);
  pageLabels(doc, sheets);
  const fields = about.fillable ? new Fields(doc) : undefined;
  growTree(doc, treeOf(sheets), marked, fields);
  fields?.end();
  attach(doc, about.attachments, creation);
  doc.end();
  return bytes;
}

function newDocument(lang: string, { title, revision }: About): PDFKit.PDFDocument {
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
      Keywords: `revision ${revision}`,
      CreationDate: creation,
    },
  };
  return new PDFDocument(options as unknown as PDFKit.PDFDocumentOptions);
}

/** Several sheets are parts of one document; one sheet is the document. */
function treeOf(sheets: readonly LaidSheet[]): Tag {
  const [only] = sheets;
  if (only && sheets.length === 1) return only.tree;
  const parts = sheets.map(({ tree }): Tag => ({ ...tree, type: "Part" }));
  return { type: "Document", children: parts };
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
  const at = doc.bufferedPageRange().count - 1;
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
    const run = content && marked.get(content);
    if (run && item.is === "field")
      run.field = { page: at, x: item.x, y: item.y, w: item.w, h: item.h };
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
  if (before) before.run.push(run);
  else marked.set(content, { run });
}
