/** A file that goes into the PDF, and how it stands to it. */
export interface Attachment {
  name: string;
  about: string;
  type: string;
  relation: "Source" | "Data";
  bytes: Buffer;
}

/** Puts files into the document, each as an associated file. */
export function attach(doc: PDFKit.PDFDocument, files: readonly Attachment[], date: Date): void {
  const inner = doc as PDFKit.PDFDocument & { _root: { data: Record<string, unknown> } };
  const refs = files.map(({ name, about, type, relation, bytes }) =>
    doc.file(bytes, {
      name,
      description: about,
      type,
      relationship: relation,
      creationDate: date,
      modifiedDate: date,
    } as PDFKit.Mixins.PDFAttachmentOptions),
  );
  if (refs.length > 0) inner._root.data["AF"] = refs;
}
