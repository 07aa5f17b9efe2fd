import type { PageContent } from "../content.js";
import type { Font } from "../fonts.js";
import type { Dict, Pdf } from "../objects.js";
import type { Element } from "../structure.js";

/** What the rules look at: one PDF, read once. */
export interface Subject {
  pdf: Pdf;
  catalog: Dict;
  xmp: string;
  elements: Element[];
  contents: PageContent[];
  fonts: Map<string, Font>;
  shown: Map<string, Set<number>>;
  dicts: Dict[];
}

/** One rule: what is against it, in words; nothing where it holds. */
export type Check = (subject: Subject) => string[];

/** Rules by clause and number, as in `7.1-3`. */
export type Rules = Record<string, Check>;

/** A finding, where something is not so. */
export function unless(good: boolean, finding: string): string[] {
  return good ? [] : [finding];
}

/** A rule over the elements of some types. */
export function each(types: string, bad: (element: Element) => string | undefined): Check {
  const wanted = new Set(types.split(" "));
  return ({ elements }) =>
    elements
      .filter(({ type }) => wanted.has(type))
      .flatMap((element) => {
        const finding = bad(element);
        return finding === undefined ? [] : [`${element.type} ${element.ref}: ${finding}`];
      });
}
