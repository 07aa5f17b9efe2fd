import LineBreaker from "linebreak";
import type { Content, Face, Item } from "../model/page.js";
import type { Inline } from "./box.js";
import { ascent, descent, runsOf, widthOf } from "./fonts.js";
import type { Style } from "./style.js";

/** A piece that cannot be cut: a run of text in one face, or an atom. */
interface Piece {
  width: number;
  inline: Inline;
  text: string;
  face: Face;
}

/** Something laid out: its height, what it paints from its upper left corner, and what is laid out inside it. */
export interface Laid {
  height: number;
  items: readonly Item[];
  inside: readonly Placed[];
}

/** Where something laid out stands, from the upper left corner of what is round it. */
export interface Placed {
  laid: Laid;
  x: number;
  y: number;
}

/** A word with what sticks to it; `end` says that a line ends after it. */
interface Word {
  pieces: Piece[];
  width: number;
  /** The width without the spaces at its end. */
  solid: number;
  end: boolean;
}

/** Breaks inline pieces into lines of a width and sets them. */
export function setLines(
  inlines: readonly Inline[],
  style: Style,
  width: number,
  missing: (character: string) => void,
): Laid {
  const lines = linesOf(wordsOf(trimmed(inlines), missing), style.nowrap ? Infinity : width);
  const items: Item[] = [];
  let y = 0;
  for (const line of lines) {
    const { height, baseline } = heightOf(line, style);
    setLine(line, style, width, y + baseline, items);
    y += height;
  }
  return { height: y, items, inside: [] };
}

/** All that something placed paints, the outer before the inner. */
export function itemsOf(placed: Placed): Item[] {
  const all: Item[] = [];
  gather(placed, all);
  return all;
}

function gather({ laid, x, y }: Placed, all: Item[]): void {
  for (const item of laid.items)
    all.push(
      item.is === "line"
        ? { ...item, x: item.x + x, y: item.y + y, x2: item.x2 + x, y2: item.y2 + y }
        : { ...item, x: item.x + x, y: item.y + y },
    );
  for (const inner of laid.inside)
    gather({ laid: inner.laid, x: x + inner.x, y: y + inner.y }, all);
}

/** No space at either end, and none doubled where pieces meet. */
function trimmed(inlines: readonly Inline[]): Inline[] {
  let open = true;
  const kept = inlines.flatMap((inline): Inline[] => {
    if (inline.is === "break") open = true;
    if (inline.is === "field" || inline.is === "drawing") open = false;
    if (inline.is !== "text") return [inline];
    const text = open ? inline.text.replace(/^ +/, "") : inline.text;
    if (text === "") return [];
    open = text.endsWith(" ");
    return [{ ...inline, text }];
  });
  return kept;
}

function wordsOf(inlines: readonly Inline[], missing: (character: string) => void): Word[] {
  const text = inlines
    .map((one) => (one.is === "text" ? one.text : one.is === "break" ? "\n" : "\uFFFC"))
    .join("")
    .replaceAll(" ·", "\u00A0·");
  const breaker = new LineBreaker(text);
  const words: Word[] = [];
  const queue = inlines.map((inline) => ({
    inline,
    length: inline.is === "text" ? inline.text.length : 1,
  }));
  let at = 0;
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) {
    const pieces = take(queue, next.position - at, missing);
    at = next.position;
    const width = pieces.reduce((sum, piece) => sum + piece.width, 0);
    const end = pieces.some((piece) => piece.inline.is === "break");
    words.push({ pieces, width, solid: width - spaceAtEnd(pieces), end });
  }
  return words;
}

type Queue = { inline: Inline; length: number }[];

/** Takes the next so many characters off the queue, cut into pieces. */
function take(queue: Queue, count: number, missing: (character: string) => void): Piece[] {
  const pieces: Piece[] = [];
  for (let left = count; left > 0;) {
    const head = queue[0];
    if (!head) break;
    const n = Math.min(left, head.length);
    const { inline } = head;
    if (inline.is === "text") {
      const start = inline.text.length - head.length;
      pieces.push(...textPieces(inline, inline.text.slice(start, start + n), missing));
    } else pieces.push({ inline, text: "", face: "regular", width: atomWidth(inline) });
    head.length -= n;
    left -= n;
    if (head.length === 0) queue.shift();
  }
  return pieces;
}

function textPieces(
  inline: Inline & { is: "text" },
  text: string,
  missing: (character: string) => void,
): Piece[] {
  const { bold, italic, size } = inline.style;
  const face: Face = bold ? "bold" : italic ? "italic" : "regular";
  return runsOf(text, face, missing).map((run) => ({
    ...run,
    inline,
    width: widthOf(run.text, run.face, size),
  }));
}

function atomWidth(inline: Inline): number {
  if (inline.is !== "field" && inline.is !== "drawing") return 0;
  const [, right, , left] = inline.style.margin;
  return (inline.style.width ?? inline.style.size) + left + right;
}

function spaceAtEnd(pieces: readonly Piece[]): number {
  const last = pieces.at(-1);
  if (last?.inline.is !== "text") return 0;
  const spaces = last.text.length - last.text.trimEnd().length;
  return spaces * widthOf(" ", last.face, last.inline.style.size);
}

function linesOf(words: readonly Word[], width: number): Piece[][] {
  const lines: Word[][] = [[]];
  let used = 0;
  for (const word of words) {
    if (used > 0 && used + word.solid > width + 0.01) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)?.push(word);
    used += word.width;
    if (word.end) {
      lines.push([]);
      used = 0;
    }
  }
  lines.forEach((line, i) => i > 0 && joinLone(lines[i - 1] ?? [], line, width));
  return lines
    .filter((line, i) => line.length > 0 || i === 0)
    .map((line) => line.flatMap(({ pieces }) => pieces));
}

/** A word that would stand alone on the line after takes the last word of the line before to itself. */
function joinLone(before: Word[], line: Word[], width: number): void {
  const [lone] = line;
  const last = before.at(-1);
  if (!lone || !last || line.length > 1 || before.length < 3 || last.end) return;
  if (last.width + lone.solid <= width) line.unshift(...before.splice(-1));
}

/** The line's height is the block's leading, or more where an atom is taller. */
function heightOf(line: readonly Piece[], style: Style): { height: number; baseline: number } {
  const half = ((style.leading - ascent - descent) * style.size) / 2;
  let [up, down] = [ascent * style.size + half, descent * style.size + half];
  for (const { inline } of line) {
    if (inline.is !== "field" && inline.is !== "drawing") continue;
    const height = inline.style.height ?? inline.style.size;
    const [top, , bottom] = inline.style.margin;
    const rise = riseOf(inline.style, height, style.size);
    up = Math.max(up, rise + top);
    down = Math.max(down, height - rise + bottom);
  }
  return { height: up + down, baseline: up };
}

/** How far an atom's top stands above the baseline. */
function riseOf(atom: Style, height: number, size: number): number {
  return atom.valign === "baseline" ? height - 0.12 * size : height / 2 + 0.36 * size;
}

function setLine(
  line: readonly Piece[],
  style: Style,
  width: number,
  baseline: number,
  items: Item[],
): void {
  const last = line.at(-1);
  const used = line.reduce((sum, piece) => sum + piece.width, 0) - (last ? spaceAtEnd([last]) : 0);
  const room = Math.max(0, width - used);
  let x = style.align === "right" ? room : style.align === "center" ? room / 2 : 0;
  for (const piece of line) {
    items.push(...pieceItems(piece, x, baseline, style));
    x += piece.width;
  }
}

/** A superscript stands higher by so much of the size of its line (the number is ours). */
const superscriptRise = 0.24;

function pieceItems(
  { inline, text, face }: Piece,
  x: number,
  baseline: number,
  block: Style,
): Item[] {
  if (inline.is === "break") return [];
  const { style } = inline;
  if (inline.is === "text") {
    const y = style.valign === "super" ? baseline - superscriptRise * block.size : baseline;
    const { content } = inline;
    const { size, color } = style;
    return [{ is: "text", x, y, text, face, size, color, ...(content ? { content } : {}) }];
  }
  const height = style.height ?? style.size;
  const w = style.width ?? style.size;
  const left = x + style.margin[3];
  const y = baseline - riseOf(style, height, block.size);
  if (inline.is === "drawing")
    return inline.paths.map(({ d, color }) => ({
      is: "path",
      x: left,
      y,
      scale: w / inline.span,
      d,
      color,
    }));
  return fieldItems(style, { x: left, y, w, h: height }, inline.content);
}

function fieldItems(
  style: Style,
  at: { x: number; y: number; w: number; h: number },
  content: Content | undefined,
): Item[] {
  return content ? [{ is: "field", ...at, content }] : [edgeOnly(style, at)];
}

function edgeOnly(
  style: Style,
  { x, y, w, h }: { x: number; y: number; w: number; h: number },
): Item {
  const { width, color } = style.border[2];
  return { is: "line", x, y: y + h, x2: x + w, y2: y + h, width, color, dashed: false };
}
