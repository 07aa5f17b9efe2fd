import type { Content, Item } from "../model/page.js";
import type { Box } from "./box.js";
import { type Laid, setLines } from "./lines.js";
import type { Edge, Sides, Style } from "./style.js";
import { columnsOf, rowsOf } from "./table.js";
import { widthsOf } from "./tracks.js";

/** What cannot be laid out as it is asked for: a character that no font has, or a box taller than it may be. */
export type Trouble = { glyph: string } | { tooTall: string };

/** Takes note of a trouble. */
export type Report = (trouble: Trouble) => void;

/** How much of the spare height stands above what is set in a box. */
const shareAbove: Partial<Record<Style["valign"], number>> = { middle: 0.5, bottom: 1 };

/** Lays a box out at a width, in one piece. */
export function setBlock(box: Box, width: number, report: Report): Laid {
  const inner = setInner(box, width, report);
  return framed(box, width, inner, heightIn(box, inner));
}

/** What stands in a box, without its frame. */
function setInner(box: Box, width: number, report: Report): Laid {
  const { style, element } = box;
  const [top, right, bottom, left] = insets(style);
  const inner = setContent(box, width - left - right, report);
  const own = inner.height + top + bottom;
  const name = element.attribs["data-fixed"];
  if (name !== undefined && own > (style.height ?? own) + 0.5) report({ tooTall: name });
  return inner;
}

/** The height of a box round what stands in it. */
function heightIn({ style }: Box, inner: Laid): number {
  const [top, , bottom] = insets(style);
  return Math.max(style.height ?? 0, inner.height + top + bottom);
}

/** What stands in a box, with its frame, at a height that its neighbours may have set. */
function framed(box: Box, width: number, inner: Laid, height: number): Laid {
  const { style } = box;
  const [top, , bottom, left] = insets(style);
  const spare = height - (inner.height + top + bottom);
  const down = top + spare * (shareAbove[style.valign] ?? 0);
  return {
    height,
    items: [
      ...frame(style, width, height),
      ...(box.field ? [cellField(box.field, width, height)] : []),
    ],
    inside: [{ laid: inner, x: left, y: down }],
  };
}

function cellField(content: Content, w: number, h: number): Item {
  return { is: "field", x: 0, y: 0, w, h, content };
}

/** Padding and border together, side by side. */
export function insets({ padding, border }: Style): Sides<number> {
  return [
    padding[0] + border[0].width,
    padding[1] + border[1].width,
    padding[2] + border[2].width,
    padding[3] + border[3].width,
  ];
}

function setContent(box: Box, width: number, report: Report): Laid {
  if (box.style.display === "grid") return setGrid(box, width, report);
  if (box.style.display === "table")
    return stack(rowsOf(box).map((row) => setRow(row.box, columnsOf(box, width), report)));
  const lines =
    box.inlines.length > 0
      ? [setLines(box.inlines, box.style, width, (glyph) => report({ glyph }))]
      : [];
  if (box.children.length === 0) return stack(lines);
  return setStack(box.children, width, report, lines);
}

function stack(parts: readonly Laid[]): Laid {
  let height = 0;
  const inside = parts.map((laid) => {
    const at = height;
    height += laid.height;
    return { laid, x: 0, y: at };
  });
  return { height, items: [], inside };
}

/** Blocks below one another; where two margins meet, the larger one counts. */
function setStack(
  children: readonly Box[],
  width: number,
  report: Report,
  first: readonly Laid[],
): Laid {
  const start = stack(first);
  let [y, margin] = [start.height, first.length > 0 ? 0 : -Infinity];
  const inside = [...start.inside];
  for (const child of children) {
    const [top, right, bottom, left] = child.style.margin;
    const laid = setBlock(child, width - left - right, report);
    y += Math.max(0, margin, margin === -Infinity ? 0 : top);
    inside.push({ laid, x: left, y });
    y += laid.height;
    margin = bottom;
  }
  return { height: y, items: [], inside };
}

function setGrid(box: Box, width: number, report: Report): Laid {
  const rows = gridRows(box, width, report);
  const space = { height: box.style.gap, items: [], inside: [] };
  return stack(rows.flatMap((row, i) => (i > 0 ? [space, row] : [row])));
}

/** The rows of a grid, each laid out. */
export function gridRows({ children, style }: Box, width: number, report: Report): Laid[] {
  const tracks = style.columns.length > 0 ? style.columns : [{ share: 1 }];
  const widths = widthsOf(tracks, width, style.gap);
  const rows: Laid[] = [];
  for (let i = 0; i < children.length; i += widths.length)
    rows.push(setCells(children.slice(i, i + widths.length), widths, style.gap, report));
  return rows;
}

/** Lays out a table row in columns of these widths. */
export function setRow(row: Box, widths: readonly number[], report: Report): Laid {
  let at = 0;
  const spanned = row.children.map((cell) => {
    const span = Number(cell.element.attribs["colspan"] ?? 1);
    const own = widths.slice(at, at + span).reduce((sum, one) => sum + one, 0);
    at += span;
    return own;
  });
  const cells = setCells(row.children, spanned, 0, report);
  const width = widths.reduce((sum, one) => sum + one, 0);
  return { ...cells, items: frame(row.style, width, cells.height) };
}

function setCells(
  cells: readonly Box[],
  widths: readonly number[],
  gap: number,
  report: Report,
): Laid {
  const set = cells.map((cell, i) => {
    const width = widths[i] ?? 0;
    return { cell, width, inner: setInner(cell, width, report) };
  });
  const height = Math.max(0, ...set.map(({ cell, inner }) => heightIn(cell, inner)));
  let x = 0;
  const inside = set.map(({ cell, width, inner }) => {
    const at = x;
    x += width + gap;
    return { laid: framed(cell, width, inner, height), x: at, y: 0 };
  });
  return { height, items: [], inside };
}

/** A box's background and borders. */
function frame(style: Style, w: number, h: number): Item[] {
  const ground: Item[] =
    style.background === "" ? [] : [{ is: "fill", x: 0, y: 0, w, h, color: style.background }];
  const [top, right, bottom, left] = style.border;
  return [
    ...ground,
    ...edge(top, 0, top.width / 2, w, top.width / 2),
    ...edge(right, w - right.width / 2, 0, w - right.width / 2, h),
    ...edge(bottom, 0, h - bottom.width / 2, w, h - bottom.width / 2),
    ...edge(left, left.width / 2, 0, left.width / 2, h),
  ];
}

function edge(
  { width, color, dashed }: Edge,
  x: number,
  y: number,
  x2: number,
  y2: number,
): Item[] {
  return width > 0 ? [{ is: "line", x, y, x2, y2, width, color, dashed }] : [];
}
