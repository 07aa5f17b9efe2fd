import * as b from "./break.js";
import { type Pdf, catalog, dict, list, pagesOf } from "./objects.js";

/** How to break each rule: what is done to the object tree of a good sheet. */
export type Breaks = Record<string, (pdf: Pdf) => void>;

const aiim = "http://www.aiim.org/pdfua/ns/id/";

function prefix(pdf: Pdf, more: string): void {
  b.rewrite(pdf, "pdfuaid", "ua");
  b.rewrite(pdf, "</rdf:RDF>", `<x xmlns:ua="${aiim}">${more}</x></rdf:RDF>`);
}

function tdInRow(pdf: Pdf): void {
  const row = b.first(pdf, "TD").parent;
  if (row) row.dict["/S"] = "/P";
}

/** Gives the first cell that holds a value a span. */
function span(pdf: Pdf, key: string, cells: number): void {
  b.enter(pdf, "TD", "/A", { "/O": "/Table", [key]: cells });
}

const fileBreaks: Breaks = {
  "5-1": (pdf) => b.rewrite(pdf, /pdfuaid:part/g, "dc:part"),
  "5-2": (pdf) => b.rewrite(pdf, /(<pdfuaid:part>)1/g, "$12"),
  "5-3": (pdf) => prefix(pdf, ""),
  "5-4": (pdf) => prefix(pdf, "<ua:amd>2014</ua:amd>"),
  "5-5": (pdf) => prefix(pdf, "<ua:corr>2014</ua:corr>"),
  "6.1-1": (pdf) => void (pdf.header = "%PDF-2.0"),
  "6.2-1": (pdf) => void (catalog(pdf)["/MarkInfo"] = {}),
  "7.1-4": (pdf) => void (catalog(pdf)["/MarkInfo"] = { "/Marked": true, "/Suspects": true }),
  "7.1-8": (pdf) => void delete catalog(pdf)["/Metadata"],
  "7.1-9": (pdf) => b.rewrite(pdf, /<dc:title>[\s\S]*<\/dc:title>/g, ""),
  "7.1-10": (pdf) => void (catalog(pdf)["/ViewerPreferences"] = {}),
  "7.1-11": (pdf) => void delete catalog(pdf)["/StructTreeRoot"],
  "7.2-2": b.silence,
  "7.2-29": (pdf) => void (catalog(pdf)["/Lang"] = "u:plain English"),
  "7.2-33": b.silence,
  "7.2-24": (pdf) => {
    b.silence(pdf);
    b.annotate(pdf, { "/Subtype": "/Text", "/Contents": "u:look here" });
  },
  "7.2-25": (pdf) => {
    b.silence(pdf);
    b.annotate(pdf, { "/Subtype": "/Widget", "/TU": "u:name" });
  },
  "7.11-1": (pdf) => void b.add(pdf, { "/EF": {}, "/F": "u:plan.json" }),
  "7.16-1": (pdf) => void (pdf.trailer["/Encrypt"] = { "/P": 4 }),
};

const contentBreaks: Breaks = {
  "7.1-1": (pdf) => b.paint(pdf, "/P <</MCID 0>> BDC /Artifact BMC EMC EMC"),
  "7.1-2": (pdf) => b.paint(pdf, "/Artifact BMC /P <</MCID 0>> BDC EMC EMC"),
  "7.1-3": (pdf) => b.paint(pdf, "0 0 9 9 re f"),
  "7.2-30": (pdf) => spanned(pdf, "ActualText"),
  "7.2-31": (pdf) => spanned(pdf, "Alt"),
  "7.2-32": (pdf) => spanned(pdf, "E"),
  "7.2-34": b.silence,
  "7.18.1-1": (pdf) => b.annotate(pdf, { "/Subtype": "/Text", "/Contents": "u:look here" }),
  "7.18.1-2": (pdf) => b.annotate(pdf, { "/Subtype": "/Text" }),
  "7.18.1-3": (pdf) => b.annotate(pdf, { "/Subtype": "/Widget" }),
  "7.18.3-1": (pdf) => {
    b.annotate(pdf, { "/Subtype": "/Widget" });
    delete pagesOf(pdf)[0]?.dict["/Tabs"];
  },
  "7.18.4-1": (pdf) => b.annotate(pdf, { "/Subtype": "/Widget" }),
  "7.18.5-1": (pdf) => b.annotate(pdf, { "/Subtype": "/Link" }),
  "7.18.5-2": (pdf) => b.annotate(pdf, { "/Subtype": "/Link" }),
  "7.20-2": (pdf) => {
    const drawing = b.add(pdf, { "/Subtype": "/Form" }, "/P <</MCID 0>> BDC EMC");
    dict(pdf, pagesOf(pdf)[0]?.dict["/Resources"])["/XObject"] = { "/X1": drawing };
    b.paint(pdf, "/Artifact BMC /X1 Do /X1 Do EMC");
  },
};

function spanned(pdf: Pdf, entry: string): void {
  b.silence(pdf);
  b.paint(pdf, `/Span <</${entry} (x)>> BDC EMC`);
}

const treeBreaks: Breaks = {
  "7.1-5": (pdf) => b.retype(pdf, "P", "Step"),
  "7.1-6": (pdf) => b.roles(pdf, { "/A": "/B", "/B": "/A" }),
  "7.1-7": (pdf) => b.roles(pdf, { "/P": "/Div" }),
  "7.1-12": (pdf) => void delete b.first(pdf, "P").dict["/P"],
  "7.2-21": (pdf) => speechless(pdf, "/ActualText"),
  "7.2-22": (pdf) => speechless(pdf, "/Alt"),
  "7.2-23": (pdf) => speechless(pdf, "/E"),
  "7.3-1": (pdf) => b.retype(pdf, "P", "Figure"),
  "7.4.2-1": (pdf) => b.retype(pdf, "H2", "H4"),
  "7.4.4-1": (pdf) => b.some(pdf, "H3").forEach((one) => void (one.dict["/S"] = "/H")),
  "7.4.4-2": (pdf) => b.retype(pdf, "H3", "H"),
  "7.4.4-3": (pdf) => b.retype(pdf, "H3", "H"),
  "7.7-1": (pdf) => b.retype(pdf, "P", "Formula"),
  "7.9-1": (pdf) => b.retype(pdf, "P", "Note"),
  "7.9-2": (pdf) =>
    b.some(pdf, "P").forEach((one) => Object.assign(one.dict, { "/S": "/Note", "/ID": "u:n1" })),
  "7.18.4-2": (pdf) => void delete b.first(pdf, "Form").dict["/A"],
};

function speechless(pdf: Pdf, entry: string): void {
  b.silence(pdf);
  b.enter(pdf, "P", entry, "u:x");
}

const nestingBreaks: Breaks = {
  "7.2-3": (pdf) => b.retype(pdf, "THead", "P"),
  "7.2-4": (pdf) => b.retype(pdf, "TBody", "Div"),
  "7.2-5": (pdf) => b.retype(pdf, "Table", "Div"),
  "7.2-6": (pdf) => b.retype(pdf, "Table", "Div"),
  "7.2-7": (pdf) => {
    b.retype(pdf, "THead", "TFoot");
    b.retype(pdf, "Table", "Div");
  },
  "7.2-8": (pdf) => b.retype(pdf, "TR", "P", "THead"),
  "7.2-9": tdInRow,
  "7.2-10": (pdf) => b.retype(pdf, "TD", "P"),
  "7.2-11": (pdf) => b.retype(pdf, "TBody", "THead"),
  "7.2-12": (pdf) => {
    b.retype(pdf, "THead", "TFoot");
    b.retype(pdf, "TBody", "TFoot");
  },
  "7.2-13": (pdf) => {
    b.retype(pdf, "THead", "TFoot");
    b.retype(pdf, "TBody", "TR");
  },
  "7.2-14": (pdf) => b.retype(pdf, "TBody", "TR"),
  "7.2-16": (pdf) => b.caption(pdf, "Table", 1),
  "7.2-17": (pdf) => b.retype(pdf, "L", "Div"),
  "7.2-18": (pdf) => b.retype(pdf, "LI", "Div"),
  "7.2-19": (pdf) => b.retype(pdf, "LI", "P"),
  "7.2-20": (pdf) => b.retype(pdf, "LBody", "P"),
  "7.2-26": (pdf) => b.retype(pdf, "P", "TOCI"),
  "7.2-27": (pdf) => b.retype(pdf, "L", "TOC"),
  "7.2-28": (pdf) => {
    b.retype(pdf, "L", "TOC");
    b.caption(pdf, "TOC", 1);
  },
  "7.2-36": (pdf) => b.retype(pdf, "TR", "P", "THead"),
  "7.2-37": (pdf) => b.retype(pdf, "TR", "P", "TBody"),
  "7.2-38": (pdf) => {
    b.retype(pdf, "TBody", "TFoot");
    b.retype(pdf, "TR", "P", "TFoot");
  },
  "7.2-39": (pdf) => {
    b.caption(pdf, "Table", 0);
    b.caption(pdf, "Table", 9);
  },
  "7.2-40": (pdf) => b.caption(pdf, "L", 1),
};

const tableBreaks: Breaks = {
  "7.2-15": (pdf) => {
    const [, second] = b.first(pdf, "TR", "TBody").kids;
    const below = b.some(pdf, "TR", "TBody")[1]?.kids[0];
    if (second) second.dict["/A"] = { "/O": "/Table", "/RowSpan": 2 };
    if (below) below.dict["/A"] = { "/O": "/Table", "/ColSpan": 2 };
  },
  "7.2-41": (pdf) => span(pdf, "/RowSpan", 99),
  "7.2-42": (pdf) => {
    const { dict: row } = b.first(pdf, "TR", "TBody");
    row["/K"] = list(pdf, row["/K"]).slice(1);
  },
  "7.2-43": (pdf) => span(pdf, "/ColSpan", 2),
  "7.5-1": (pdf) => b.some(pdf, "TH").forEach((one) => void delete one.dict["/A"]),
  "7.5-2": (pdf) => b.enter(pdf, "TD", "/A", { "/O": "/Table", "/Headers": ["u:nobody"] }),
};

const fontBreaks: Breaks = {
  "7.21.3.1-1": (pdf) => b.fontDicts(pdf).forEach((one) => (one["/Encoding"] = "/Other")),
  "7.21.3.2-1": (pdf) => b.descendants(pdf).forEach((one) => delete one["/CIDToGIDMap"]),
  "7.21.4.1-1": (pdf) => b.descendants(pdf).forEach((one) => delete one["/FontDescriptor"]),
  "7.21.4.1-2": (pdf) => b.paint(pdf, "/Artifact BMC BT FONT 12 Tf <fff0> Tj ET EMC"),
  "7.21.4.2-2": (pdf) =>
    b.descendants(pdf).forEach((one) => {
      dict(pdf, one["/FontDescriptor"])["/CIDSet"] = b.add(pdf, {}, "\0");
    }),
  "7.21.5-1": (pdf) => b.descendants(pdf).forEach((one) => (one["/W"] = [])),
  "7.21.7-1": (pdf) => b.fontDicts(pdf).forEach((one) => delete one["/ToUnicode"]),
  "7.21.7-2": (pdf) =>
    b.fontDicts(pdf).forEach((one) => {
      one["/ToUnicode"] = b.add(pdf, {}, "1 beginbfrange <0001> <0001> [<feff>] endbfrange");
    }),
  "7.21.8-1": (pdf) => b.paint(pdf, "/Artifact BMC BT FONT 12 Tf <0000> Tj ET EMC"),
};

export const breaks: Breaks = {
  ...fileBreaks,
  ...contentBreaks,
  ...treeBreaks,
  ...nestingBreaks,
  ...tableBreaks,
  ...fontBreaks,
};
