import { type Dict, type PageObject, type Pdf, type Value, dict, pagesOf } from "./objects.js";
import { type Operation, operationsOf } from "./tokens.js";

/** A mark that is open where something is painted. */
export interface Mark {
  tag: string;
  properties: Dict;
  mcid: number | undefined;
}

/** An operation of a page, with the marks that are open around it, outermost first. */
export interface Painted extends Operation {
  page: PageObject;
  marks: readonly Mark[];
}

/** A page's operations; `unbalanced` says that marks close that were not open, or stay open. */
export interface PageContent {
  page: PageObject;
  operations: Painted[];
  begun: Painted[];
  unbalanced: boolean;
}

const paints = new Set(["Tj", "TJ", "'", '"', "f", "F", "f*", "S", "s", "B", "B*", "b", "b*"]);
const paintsMore = new Set(["Do", "sh", "EI"]);

/** Whether an operation leaves something on the page. */
export function isPainting({ operator }: Operation): boolean {
  return paints.has(operator) || paintsMore.has(operator);
}

/** Follows the marks of every page. */
export function contentsOf(pdf: Pdf): PageContent[] {
  return pagesOf(pdf).map((page) => {
    const content: PageContent = { page, operations: [], begun: [], unbalanced: false };
    let marks: Mark[] = [];
    for (const operation of operationsOf(page.content)) {
      const { operator, values } = operation;
      if (operator === "BDC" || operator === "BMC") {
        content.begun.push({ ...operation, page, marks });
        marks = [...marks, markOf(pdf, page, values)];
      } else if (operator === "EMC") {
        if (marks.length === 0) content.unbalanced = true;
        marks = marks.slice(0, -1);
      } else content.operations.push({ ...operation, page, marks });
    }
    if (marks.length > 0) content.unbalanced = true;
    return content;
  });
}

/** The mark that a BDC or BMC opens. */
export function markOf(pdf: Pdf, page: PageObject, [tag, given]: readonly Value[]): Mark {
  const named = dict(pdf, dict(pdf, page.dict["/Resources"])["/Properties"]);
  const properties = dict(pdf, typeof given === "string" ? named[given] : given);
  const mcid = properties["/MCID"];
  return {
    tag: String(tag).slice(1),
    properties,
    mcid: typeof mcid === "number" ? mcid : undefined,
  };
}
