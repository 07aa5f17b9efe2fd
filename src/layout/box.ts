import { type Element, isTag, isText } from "domhandler";
import type { Content, Tag } from "../model/page.js";
import type { Cascade } from "./cascade.js";
import { hasClass } from "./dom.js";
import { spokenName, spokenNameOfCell } from "./spoken.js";
import type { Style } from "./style.js";

/** A piece of a line: text, a forced break, or a box that is set like a letter. */
export type Inline =
  | { is: "text"; text: string; style: Style; content: Content | undefined }
  | { is: "break" }
  | { is: "field"; style: Style; content: Content | undefined }
  | { is: "drawing"; style: Style; paths: { d: string; color: string }[]; span: number };

/** A block with blocks in it, or with lines. */
export interface Box {
  element: Element;
  style: Style;
  children: Box[];
  inlines: Inline[];
  tag: Tag | undefined;
  /** The field that a cell to write in is. */
  field?: Content;
}

/** What the building of boxes needs, and the words that stand for page numbers. */
export interface Building {
  style: Cascade;
  page: string;
  pages: string;
}

const types: Record<string, string> = {
  article: "Sect",
  section: "Sect",
  h1: "H1",
  h2: "H2",
  h3: "H3",
  h4: "H4",
  p: "P",
  ul: "L",
  ol: "L",
  li: "LI",
  table: "Table",
  thead: "THead",
  tbody: "TBody",
  tr: "TR",
  th: "TH",
  td: "TD",
};

/** Builds the box of an element; without a parent tag it is decoration and leaves no trace in the tree. */
export function boxOf(
  building: Building,
  element: Element,
  parent: Style | undefined,
  under: Tag | undefined,
): Box {
  const style = building.style(element, parent);
  const tag = under && tagOf(element, under);
  const box: Box = { element, style, children: [], inlines: [], tag: tag ?? under };
  const into = tag && ["UL", "OL"].includes(tag.type) ? undefined : (tag ?? under);
  fill(building, box, element, into);
  if (tag && isPen(element)) box.field = fieldOf("cell", spokenNameOfCell(element), tag);
  return box;
}

/** Whether an element is an empty cell of a table, to write in. */
function isPen(element: Element): boolean {
  return element.name === "td" && hasClass(element, "pen");
}

function tagOf(element: Element, under: Tag): Tag | undefined {
  const type = element.attribs["data-tag"] ?? types[element.name];
  if (type === undefined) return undefined;
  const tag: Tag = { type, children: [] };
  const alt = type === "Figure" ? element.attribs["aria-label"] : undefined;
  if (alt !== undefined) tag.alt = alt;
  if (element.name === "th") tag.scope = element.attribs["scope"] === "row" ? "Row" : "Column";
  const span = Number(element.attribs["colspan"] ?? 1);
  if (span > 1) tag.span = span;
  under.children.push(tag);
  if (type !== "LI" || element.name !== "li") return tag;
  const body: Tag = { type: "LBody", children: [] };
  tag.children.push(body);
  return body;
}

/** Puts an element's children into a box: blocks as boxes, all else as pieces of its lines. */
function fill(building: Building, box: Box, element: Element, under: Tag | undefined): void {
  for (const node of element.children) {
    if (isText(node)) addText(box, node.data, box.style, under);
    if (!isTag(node)) continue;
    const style = building.style(node, box.style);
    if (style.display === "none" || hasClass(node, "running")) continue;
    if (style.display === "inline" || style.display === "inline-block")
      inline(building, box, node, box.style, under);
    else box.children.push(boxOf(building, node, box.style, under));
  }
}

function addText(box: Box, text: string, style: Style, under: Tag | undefined): void {
  const words = text.replaceAll(/[ \n\t]+/g, " ");
  const blank = words.trim() === "";
  if (words === "" || (blank && box.inlines.length === 0)) return;
  box.inlines.push({ is: "text", text: words, style, content: contentOf(under) });
}

/** The run of content that a tag is at; a new one after another tag has come between. */
function contentOf(tag: Tag | undefined): Content | undefined {
  if (!tag) return undefined;
  const last = tag.children.at(-1);
  if (last && "of" in last) return last;
  const content: Content = { of: tag };
  tag.children.push(content);
  return content;
}

function inline(
  building: Building,
  box: Box,
  element: Element,
  parent: Style,
  under: Tag | undefined,
): void {
  const style = building.style(element, parent);
  const number = pageNumber(building, element);
  if (element.name === "br") box.inlines.push({ is: "break" });
  else if (number !== undefined) addText(box, number, style, under);
  else if (element.name === "svg") box.inlines.push(drawing(element, style));
  else if (hasClass(element, "box") || hasClass(element, "blank")) {
    const kind = hasClass(element, "box") ? "box" : "line";
    const content = under && fieldOf(kind, spokenName(element), under);
    box.inlines.push({ is: "field", style, content });
  } else
    for (const node of element.children) {
      if (isText(node)) addText(box, node.data, style, under);
      if (isTag(node)) inline(building, box, node, style, under);
    }
}

function pageNumber({ page, pages }: Building, element: Element): string | undefined {
  if (hasClass(element, "page-number")) return page;
  return hasClass(element, "page-count") ? pages : undefined;
}

function fieldOf(field: "box" | "line" | "cell", alt: string, under: Tag): Content {
  const tag: Tag = { type: "Form", field, alt, children: [] };
  under.children.push(tag);
  const content: Content = { of: tag };
  tag.children.push(content);
  return content;
}

function drawing(element: Element, style: Style): Inline {
  const span = Number(
    element.attribs["viewbox"]?.split(" ")[2] ?? element.attribs["viewBox"]?.split(" ")[2] ?? 24,
  );
  const paths = element.children
    .filter(isTag)
    .map(({ attribs }) => ({ d: attribs["d"] ?? "", color: attribs["fill"] ?? "#000000" }));
  return { is: "drawing", style, paths, span };
}
