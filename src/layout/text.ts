import { type Element, isTag, isText } from "domhandler";

/** The text of an element, spaces closed up. */
export function textContent(element: Element): string {
  return deep(element).replaceAll(/\s+/g, " ").trim();
}

function deep(element: Element): string {
  if (element.name === "br") return " ";
  return element.children
    .map((node) => (isText(node) ? node.data : isTag(node) ? deep(node) : ""))
    .join("");
}
