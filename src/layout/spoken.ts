import { type Element, isTag } from "domhandler";
import { textContent } from "./text.js";

/** What a screen reader says of a field: its label, after what the elements around it are about. */
export function spokenName(element: Element): string {
  return [...about(element), element.attribs["aria-label"] ?? ""].reduceRight((name, part) =>
    name.startsWith(part) ? name : `${part}, ${name}`,
  );
}

/** What it says of a cell to write in: its label, or its row and the heading of its column. */
export function spokenNameOfCell(cell: Element): string {
  if ("aria-label" in cell.attribs) return spokenName(cell);
  const row = cell.parent && isTag(cell.parent) ? cell.parent : cell;
  const [first] = cellsOf(row);
  const named = "data-about" in row.attribs || !first || first === cell;
  const line = named ? "" : textContent(first);
  return [...about(cell), line, headingOf(cell, row)].filter((part) => part !== "").join(", ");
}

/** What the elements around a field are about, the outermost first. */
function about(element: Element): string[] {
  const above = element.parent;
  if (!above || !isTag(above)) return [];
  const own = above.attribs["data-about"] ?? "";
  return own === "" ? about(above) : [...about(above), own];
}

function headingOf(cell: Element, row: Element): string {
  const before = cellsOf(row).slice(0, cellsOf(row).indexOf(cell));
  const at = before.reduce((sum, one) => sum + Number(one.attribs["colspan"] ?? 1), 0);
  const table = row.parent?.parent;
  const head = table && isTag(table) ? childOf(table, "thead") : undefined;
  const heading = cellsOf(head && childOf(head, "tr"))[at];
  return heading ? textContent(heading) : "";
}

function cellsOf(row: Element | undefined): Element[] {
  return (row?.children ?? []).filter(isTag).filter(({ name }) => name === "td" || name === "th");
}

function childOf(element: Element, name: string): Element | undefined {
  return element.children.filter(isTag).find((child) => child.name === name);
}
