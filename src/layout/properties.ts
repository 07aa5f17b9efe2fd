import type { Edge, Sides, Style, Track } from "./style.js";
import { lengthOf } from "./units.js";

/** Sets a property from its text; false where the text is not understood. */
type Setter = (style: Style, value: string) => boolean;

const sides = ["top", "right", "bottom", "left"] as const;

function length(set: (style: Style, points: number) => void): Setter {
  return (style, value) => {
    const points = lengthOf(value, style.size);
    if (points !== undefined) set(style, points);
    return points !== undefined;
  };
}

function word<T extends string>(
  words: readonly T[],
  set: (style: Style, value: T) => void,
): Setter {
  return (style, value) => {
    const known = words.find((one) => one === value);
    if (known !== undefined) set(style, known);
    return known !== undefined;
  };
}

function box(pick: (style: Style) => Sides<number>): Setter {
  return (style, value) => {
    const points = value.split(" ").map((one) => lengthOf(one, style.size));
    const [a, b = a, c = a, d = b] = points;
    if (a === undefined || b === undefined || c === undefined || d === undefined) return false;
    pick(style).splice(0, 4, a, b, c, d);
    return true;
  };
}

function edgeOf(style: Style, value: string): Edge | undefined {
  if (value === "none") return { width: 0, color: "#000000", dashed: false };
  const [thick = "", line = "", color = ""] = value.split(" ");
  const width = lengthOf(thick, style.size);
  const good = width !== undefined && ["solid", "dashed"].includes(line) && isColor(color);
  return good ? { width, color, dashed: line === "dashed" } : undefined;
}

function isColor(text: string): boolean {
  return /^#[0-9A-Fa-f]{6}$/.test(text);
}

function border(which: readonly number[]): Setter {
  return (style, value) => {
    const edge = edgeOf(style, value);
    if (edge) for (const side of which) style.border[side] = edge;
    return edge !== undefined;
  };
}

function columns(style: Style, value: string): boolean {
  const tracks = value.split(" ").map((one): Track | undefined => {
    const share = /^([\d.]+)fr$/.exec(one);
    if (share) return { share: Number(share[1]) };
    const points = lengthOf(one, style.size);
    return points === undefined ? undefined : { points };
  });
  const known = tracks.filter((track) => track !== undefined);
  if (known.length === tracks.length) style.columns = known;
  return known.length === tracks.length;
}

const color =
  (set: (style: Style, value: string) => void): Setter =>
  (style, value) => {
    if (isColor(value)) set(style, value.toUpperCase());
    return isColor(value);
  };

const nothing: Setter = () => true;

/** Every property that the layout understands; the last few matter to a browser only. */
export const properties: Readonly<Record<string, Setter>> = {
  display: word(["block", "inline", "inline-block", "grid", "none"], (s, v) => (s.display = v)),
  "font-size": length((s, v) => (s.size = v)),
  "font-weight": word(["bold", "normal"], (s, v) => (s.bold = v === "bold")),
  "font-style": word(["italic", "normal"], (s, v) => (s.italic = v === "italic")),
  "line-height": (style, value) => {
    style.leading = Number(value);
    return !Number.isNaN(style.leading);
  },
  color: color((s, v) => (s.color = v)),
  "background-color": color((s, v) => (s.background = v)),
  "text-align": word(["left", "right", "center"], (s, v) => (s.align = v)),
  "vertical-align": word(
    ["top", "middle", "bottom", "super", "baseline"],
    (s, v) => (s.valign = v),
  ),
  margin: box((s) => s.margin),
  padding: box((s) => s.padding),
  border: border([0, 1, 2, 3]),
  width: length((s, v) => (s.width = v)),
  height: length((s, v) => (s.height = v)),
  "grid-template-columns": columns,
  gap: length((s, v) => (s.gap = v)),
  "break-after": word(["avoid", "auto"], (s, v) => (s.keepNext = v === "avoid")),
  "break-inside": word(["avoid", "auto"], (s, v) => (s.keepInside = v === "avoid")),
  "break-before": word(["page", "avoid", "auto"], (s, v) => {
    s.newPage = v === "page";
    s.keepPrevious = v === "avoid";
  }),
  "white-space": word(["nowrap", "normal"], (s, v) => (s.nowrap = v === "nowrap")),
  ...Object.fromEntries(
    sides.flatMap((side, i) => [
      [`margin-${side}`, length((s, v) => (s.margin[i] = v))],
      [`padding-${side}`, length((s, v) => (s.padding[i] = v))],
      [`border-${side}`, border([i])],
    ]),
  ),
  "font-family": nothing,
  "border-collapse": nothing,
  "box-sizing": nothing,
  "align-items": nothing,
  "list-style": nothing,
};
