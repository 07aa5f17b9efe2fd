import { type Element, isTag } from "domhandler";
import { parseDocument } from "htmlparser2";

/** The first element of an HTML text. */
export function readHtml(html: string): Element | undefined {
  return parseDocument(html).children.find(isTag);
}

/** Whether an element carries a class. */
export function hasClass(element: Element, name: string): boolean {
  return (element.attribs["class"] ?? "").split(" ").includes(name);
}
