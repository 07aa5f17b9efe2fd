import type { Item } from "../model/page.js";

/** Draws one item of a page. */
export function draw(doc: PDFKit.PDFDocument, item: Item): void {
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
  if (content.of.field === "cell") {
    doc.lineWidth(0.5).rect(x, y, w, h).stroke("#8a8a8a");
    return;
  }
  doc
    .lineWidth(0.6)
    .moveTo(x, y + h)
    .lineTo(x + w, y + h)
    .stroke("#000000");
}

/** One word across the page, light enough to read the sheet through it. */
export function drawWatermark(
  doc: PDFKit.PDFDocument,
  word: string,
  width: number,
  height: number,
): void {
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
