import type { Element } from "domhandler";
import { isTag } from "domhandler";
import { textContent } from "./text.js";
import { gridRows, insets, setBlock, setRow, type Report } from "./block.js";
import type { Box } from "./box.js";
import type { Item } from "../model/page.js";
import type { Laid } from "./lines.js";
import { type Row, columnsOf, rowsOf } from "./table.js";

/** A piece of the sheet that is never cut, in order from top to bottom. */
export interface Slab {
  laid: Laid;
  x: number;
  /** Space that it wants above and below. */
  top: number;
  bottom: number;
  /** It stays with the slab after it. */
  keepNext: boolean;
  /** It stays with the slab before it. */
  keepPrevious: boolean;
  newPage: boolean;
  /** The parts of the sheet in which it lies, that say at the top of a page that they go on. */
  within: readonly Box[];
  /** What was said on an earlier page and holds here too. */
  still?: string;
  /** A table's head, set again where the table goes on. */
  head?: Laid;
  /** It is the head of a table. */
  isHead?: boolean;
  headings: { level: number; text: string }[];
}

/** Cuts a box into slabs; one that must stay whole is cut only where no page could hold it. */
export function slabsOf(root: Box, width: number, page: number, report: Report): Slab[] {
  return cut({ page, report }, root, { x: 0, width, within: [] });
}

interface Cutting {
  page: number;
  report: Report;
}

function cut(cutting: Cutting, box: Box, at: Place): Slab[] {
  const [top, right, bottom, left] = box.style.margin;
  const place = { ...at, x: at.x + left, width: at.width - left - right };
  const whole = splits(box) ? undefined : slab(cutting, box, place);
  const stays = whole && (whole.laid.height <= cutting.page || box.children.length === 0);
  const slabs = stays ? [whole] : parts(cutting, box, place);
  const [first, last] = [slabs[0], slabs.at(-1)];
  if (first) {
    first.top = Math.max(first.top, top, stays ? lost(box, "first") : 0);
    first.newPage ||= box.style.newPage;
    first.keepPrevious ||= box.style.keepPrevious;
    const { "data-still": still, "data-holds": holds } = box.element.attribs;
    if (still !== undefined) first.still = still;
    if (holds !== undefined) for (const one of slabs.slice(1)) one.still = holds;
  }
  if (last) {
    last.bottom = Math.max(last.bottom, bottom, stays ? lost(box, "last") : 0);
    last.keepNext ||= box.style.keepNext;
  }
  return slabs;
}

/** The margin of a box's outermost child, which stands outside a box that has no edge there. */
function lost({ style, children, inlines }: Box, which: "first" | "last"): number {
  const side = which === "first" ? 0 : 2;
  const child = children.at(which === "first" ? 0 : -1);
  const edged = insets(style)[side] > 0 || style.height !== undefined || inlines.length > 0;
  if (!child || edged || style.display !== "block") return 0;
  return Math.max(child.style.margin[side], lost(child, which));
}

function parts(cutting: Cutting, box: Box, at: Place): Slab[] {
  const within = "data-continued" in box.element.attribs ? [...at.within, box] : at.within;
  if (box.style.display === "table") return tableSlabs(cutting, box, { ...at, within });
  const [, right, , left] = insets(box.style);
  const place = { within, x: at.x + left, width: at.width - left - right };
  const rows =
    box.style.display === "grid"
      ? gridSlabs(cutting, box, place).map((row) => [row])
      : box.children.map((child) => cut(cutting, child, place));
  if (["ul", "ol"].includes(box.element.name)) holdEnds(rows);
  return rows.flat();
}

/** The first two rows of a list stay together, and the last two. */
function holdEnds(rows: readonly Slab[][]): void {
  for (const row of [rows.at(0), rows.at(-2)]) {
    const end = row === rows.at(-1) ? undefined : row?.at(-1);
    if (end) end.keepNext = true;
  }
}

function slab({ report }: Cutting, box: Box, { x, width, within }: Place): Slab {
  const { newPage, keepNext } = box.style;
  const laid = setBlock(box, width, report);
  return { ...bare(laid, x, within), keepNext, newPage, headings: headingsIn(box.element) };
}

function bare(laid: Laid, x: number, within: readonly Box[]): Slab {
  const free = { keepNext: false, keepPrevious: false, newPage: false };
  return { laid, x, within, top: 0, bottom: 0, ...free, headings: [] };
}

function gridSlabs({ report }: Cutting, box: Box, { x, width, within }: Place): Slab[] {
  return gridRows(box, width, report).map((laid, i) => ({
    ...bare(laid, x, within),
    top: i > 0 ? box.style.gap : 0,
  }));
}

function tableSlabs({ report }: Cutting, table: Box, { x, width, within }: Place): Slab[] {
  const widths = columnsOf(table, width);
  const rows = rowsOf(table).map((row) => ({ ...row, laid: setRow(row.box, widths, report) }));
  const top = rows.find((row) => row.head)?.laid;
  const head = top && plain(top);
  return rows.map((row, i) => ({
    ...bare(row.laid, x, within),
    keepNext: row.box.style.keepNext || staysWithNext(rows, i),
    ...(row.head ? { isHead: true } : head ? { head } : {}),
  }));
}

/** The head stays with two rows, and the last two rows stay together. */
function staysWithNext(rows: readonly Row[], i: number): boolean {
  const heads = rows.filter(({ head }) => head).length;
  const [first, last] = [heads, rows.length - 1];
  return i < heads || (last - first > 2 && i === first) || (last > 1 && i === last - 1);
}

interface Place {
  x: number;
  width: number;
  within: readonly Box[];
}

/** Containers without a frame of their own are cut between their children or rows; tables between rows. */
function splits({ style, children, inlines }: Box): boolean {
  if (style.keepInside) return false;
  if (style.display === "table") return true;
  const framed = style.background !== "" || style.border.some((edge) => edge.width > 0);
  return children.length > 0 && inlines.length === 0 && !framed;
}

/** The same items without their place in the reading order. */
function plain({ height, items, inside }: Laid): Laid {
  return {
    height,
    inside: inside.map((one) => ({ ...one, laid: plain(one.laid) })),
    items: items.flatMap((item): Item[] => {
      if (item.is === "field") return [];
      if (item.is !== "text") return [item];
      const { content: _, ...rest } = item;
      return [rest];
    }),
  };
}

function headingsIn(element: Element): Slab["headings"] {
  const level = /^h([1-4])$/.exec(element.name)?.[1];
  const own = level === undefined ? [] : [{ level: Number(level), text: textContent(element) }];
  return [...own, ...element.children.filter(isTag).flatMap(headingsIn)];
}
