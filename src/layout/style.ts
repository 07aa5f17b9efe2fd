/** Top, right, bottom, left. */
export type Sides<T> = [T, T, T, T];

/** One edge of a border. */
export interface Edge {
  width: number;
  color: string;
  dashed: boolean;
}

/** A column of a grid or a table: a width in points, or a share of what is left. */
export type Track = { points: number } | { share: number };

/** All that the style sheet can say of one element, lengths in points. */
export interface Style {
  display: string;
  size: number;
  leading: number;
  bold: boolean;
  italic: boolean;
  color: string;
  background: string;
  align: "left" | "right" | "center";
  valign: "top" | "middle" | "bottom" | "super" | "baseline";
  margin: Sides<number>;
  padding: Sides<number>;
  border: Sides<Edge>;
  width: number | undefined;
  height: number | undefined;
  columns: Track[];
  gap: number;
  keepNext: boolean;
  keepPrevious: boolean;
  keepInside: boolean;
  newPage: boolean;
  nowrap: boolean;
}

const noEdge: Edge = { width: 0, color: "#000000", dashed: false };

const blocks = new Set(
  "article section header footer div h1 h2 h3 h4 p ul ol li thead tbody".split(" "),
);
const outer: Record<string, string> = {
  table: "table",
  tr: "row",
  td: "cell",
  th: "cell",
  svg: "inline-block",
  col: "none",
  colgroup: "none",
};

const rootStyle = {
  size: 12,
  leading: 1.3,
  bold: false,
  italic: false,
  color: "#000000",
  align: "left" as Style["align"],
  nowrap: false,
};

/** The style that an element starts with: what it inherits, and how its tag is laid out. */
export function startStyle(tag: string, parent: Style | undefined): Style {
  const { size, leading, bold, italic, color, align, nowrap } = parent ?? rootStyle;
  const strong = ["b", "th", "h1", "h2", "h3", "h4"].includes(tag);
  return {
    size,
    leading,
    color,
    align,
    nowrap,
    bold: bold || strong,
    italic: italic || tag === "i",
    display: outer[tag] ?? (blocks.has(tag) ? "block" : "inline"),
    background: "",
    valign: tag === "sup" ? "super" : "top",
    margin: [0, 0, 0, 0],
    padding: [0, 0, 0, 0],
    border: [noEdge, noEdge, noEdge, noEdge],
    width: undefined,
    height: undefined,
    columns: [],
    gap: 0,
    keepNext: false,
    keepPrevious: false,
    keepInside: false,
    newPage: false,
  };
}
