import { type Dict, type Pdf, type Value, catalog, dict, get, isRef, list } from "./objects.js";

/** An element of the structure tree, its type as the role map leads to a standard one. */
export interface Element {
  ref: string;
  dict: Dict;
  own: string;
  type: string;
  parent: Element | undefined;
  kids: Element[];
  /** Marked content and objects that hang on it. */
  content: ({ page: string; mcid: number } | { object: string })[];
}

/** Types that ISO 32000-1 14.8.4 names. */
export const standardTypes = new Set(
  (
    "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 " +
    "L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot " +
    "Ruby RB RT RP Warichu WT WP Figure Formula Form"
  ).split(" "),
);

/** The structure tree's root dictionary. */
export function rootOf(pdf: Pdf): Dict {
  return dict(pdf, catalog(pdf)["/StructTreeRoot"]);
}

/** The type a role map makes of another; undefined where it runs in a circle. */
export function mapped(pdf: Pdf, own: string): string | undefined {
  const roles = dict(pdf, rootOf(pdf)["/RoleMap"]);
  const seen = new Set<string>();
  let type = own;
  while (!standardTypes.has(type) && roles[`/${type}`] !== undefined) {
    if (seen.has(type)) return undefined;
    seen.add(type);
    type = nameOf(roles[`/${type}`]);
  }
  return type;
}

/** All elements of the structure tree in the order of reading. */
export function elementsOf(pdf: Pdf): Element[] {
  return list(pdf, rootOf(pdf)["/K"]).flatMap((kid) => below(pdf, kid, undefined));
}

function below(pdf: Pdf, value: Value, parent: Element | undefined): Element[] {
  const found = dict(pdf, value);
  const own = nameOf(found["/S"]);
  const element: Element = {
    ref: isRef(value) ? value : "direct",
    dict: found,
    own,
    type: mapped(pdf, own) ?? own,
    parent,
    kids: [],
    content: [],
  };
  parent?.kids.push(element);
  const all = [element];
  for (const kid of list(pdf, found["/K"])) {
    const content = contentOf(pdf, kid, found["/Pg"]);
    if (content) element.content.push(content);
    else all.push(...below(pdf, kid, element));
  }
  return all;
}

function contentOf(
  pdf: Pdf,
  kid: Value,
  page: Value | undefined,
): Element["content"][number] | undefined {
  const value = get(pdf, kid);
  if (typeof value === "number") return { page: String(page), mcid: value };
  const one = dict(pdf, kid);
  if (one["/Type"] === "/OBJR") return { object: String(one["/Obj"]) };
  if (typeof one["/MCID"] !== "number") return undefined;
  return { page: String(one["/Pg"] ?? page), mcid: one["/MCID"] };
}

/** The attributes of an element that belong to one owner, such as `/Table` or `/PrintField`. */
export function attributesOf(pdf: Pdf, element: Element, owner: string): Dict {
  const all = list(pdf, element.dict["/A"]).map((one) => dict(pdf, one));
  return Object.assign({}, ...all.filter((one) => one["/O"] === owner)) as Dict;
}

/** A name without its stroke. */
export function nameOf(value: Value | undefined): string {
  return typeof value === "string" && value.startsWith("/") ? value.slice(1) : "";
}
