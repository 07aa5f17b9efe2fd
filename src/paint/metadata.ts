/** Keeps titles with `&` or `<` from breaking the metadata, which pdfkit writes without escaping. */
export function escapeMetadata(doc: PDFKit.PDFDocument): void {
  const inner = doc as PDFKit.PDFDocument & { endMetadata(): void };
  const end = inner.endMetadata.bind(doc);
  inner.endMetadata = () => {
    for (const key of ["Title", "Keywords"] as const) {
      const text = doc.info[key];
      if (text !== undefined) doc.info[key] = escape(text);
    }
    end();
  };
}

function escape(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
