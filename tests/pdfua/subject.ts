import { contentsOf } from "./content.js";
import { fontsOf, shownCodes } from "./fonts.js";
import { type Pdf, catalog, dictsOf } from "./objects.js";
import type { Subject } from "./rules/rule.js";
import { elementsOf } from "./structure.js";

/** Reads all that the rules look at, once. */
export function subjectOf(pdf: Pdf): Subject {
  const root = catalog(pdf);
  const contents = contentsOf(pdf);
  return {
    pdf,
    catalog: root,
    xmp: pdf.streams[String(root["/Metadata"])]?.toString("utf8") ?? "",
    elements: elementsOf(pdf),
    contents,
    fonts: fontsOf(pdf),
    shown: shownCodes(pdf, contents),
    dicts: dictsOf(pdf),
  };
}
