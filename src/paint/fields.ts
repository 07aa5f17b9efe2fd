import type { Tag } from "../model/page.js";
import type { FieldPlace } from "./tree.js";

/** A reference to an object of the file, as pdfkit hands it out. */
interface Ref {
  data: Record<string, unknown>;
  write(text: string): void;
  end(): void;
}

/** What pdfkit can do beside what its types tell. */
interface Inner {
  ref(data: object): Ref;
  page: { annotations: Ref[] };
  _root: { data: Record<string, unknown> };
}

/** pdfkit writes the form when the document ends; ours has been written by then. */
type Ending = { endAcroForm: () => void };

/** Height in points from which a place to write in takes more than one line. */
const multiline = 40;

/**
 * The fields of a file that can be filled in on a screen. pdfkit draws no appearance of its own, so each box
 * brings one for both of its states, and each line an empty one.
 */
export class Fields {
  private readonly doc: PDFKit.PDFDocument;
  private readonly inner: PDFKit.PDFDocument & Inner;
  private readonly refs: Ref[] = [];

  constructor(doc: PDFKit.PDFDocument) {
    this.doc = doc;
    this.inner = doc as PDFKit.PDFDocument & Inner;
  }

  /** Makes the field of a tag and hangs it into its element; the element ends on the field's own page. */
  add(element: PDFKit.PDFStructureElement, { field, alt = "" }: Tag, place: FieldPlace): void {
    const { x, y, w, h } = place;
    this.doc.switchToPage(place.page);
    const name = `f${String(this.refs.length + 1).padStart(4, "0")}`;
    const common = {
      Subtype: "Widget",
      F: 4,
      T: new String(name),
      TU: new String(alt),
      structParent: element,
    };
    const own = field === "box" ? this.box(w, h) : this.line(w, h);
    this.doc.annotate(x, y, w, h, { ...common, ...own } as PDFKit.Mixins.AnnotationOption);
    const ref = this.inner.page.annotations.at(-1);
    if (ref) this.refs.push(ref);
    element.end();
  }

  /** Writes the form that holds all fields. */
  end(): void {
    const font = this.inner.ref({
      Type: "Font",
      Subtype: "Type1",
      BaseFont: "Helvetica",
      Encoding: "WinAnsiEncoding",
    });
    font.end();
    const form = this.inner.ref({
      Fields: this.refs,
      NeedAppearances: false,
      DA: new String("/Helv 11 Tf 0 g"),
      DR: { Font: { Helv: font } },
    });
    this.inner._root.data["AcroForm"] = form;
    (this.doc as unknown as Ending).endAcroForm = () => form.end();
  }

  private box(w: number, h: number): object {
    const [a, b, c] = [w * 0.2, w * 0.42, w * 0.82];
    const tick = `2 w 1 J ${a} ${h * 0.5} m ${b} ${h * 0.22} l ${c} ${h * 0.8} l S`;
    const states = { On: this.appearance(w, h, tick), Off: this.appearance(w, h, "") };
    return { FT: "Btn", V: "Off", AS: "Off", AP: { N: states } };
  }

  private line(w: number, h: number): object {
    const empty = this.appearance(w, h, "/Tx BMC EMC");
    return {
      FT: "Tx",
      ...(h > multiline ? { Ff: 1 << 12 } : {}),
      V: new String(""),
      DA: new String("/Helv 11 Tf 0 g"),
      AP: { N: empty },
    };
  }

  private appearance(w: number, h: number, content: string): Ref {
    const ref = this.inner.ref({
      Type: "XObject",
      Subtype: "Form",
      BBox: [0, 0, w, h],
      Resources: {},
    });
    ref.write(content);
    ref.end();
    return ref;
  }
}
