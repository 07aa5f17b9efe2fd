/** A face of the embedded fonts; the two wide ones stand in for characters that the others lack. */
export type Face = "regular" | "bold" | "italic" | "wide" | "wide-bold";

/** An element of the structure tree, in the order of reading. */
export interface Tag {
  type: string;
  children: (Tag | Content)[];
  /** What a screen reader says instead. */
  alt?: string;
  scope?: "Column" | "Row";
  span?: number;
  /** A printed field: a box to tick, a line to write on, or a cell of a table to write in. */
  field?: "box" | "line" | "cell";
}

/** A run of painted content under a tag; where one run ends and another tag begins, order is kept. */
export interface Content {
  of: Tag;
}

/** Something to paint, in points from the page's upper left corner; without content it is decoration. */
export type Item =
  | {
      is: "text";
      x: number;
      y: number;
      text: string;
      face: Face;
      size: number;
      color: string;
      content?: Content;
    }
  | { is: "fill"; x: number; y: number; w: number; h: number; color: string }
  | {
      is: "line";
      x: number;
      y: number;
      x2: number;
      y2: number;
      width: number;
      color: string;
      dashed: boolean;
    }
  | { is: "field"; x: number; y: number; w: number; h: number; content: Content }
  | { is: "path"; x: number; y: number; scale: number; d: string; color: string };

/** One page: what is painted on it, and the headings that stand on it. */
export interface Page {
  items: Item[];
  headings: { level: number; text: string; y: number }[];
}

/** A sheet laid out: pages of one size, and the tree in which it is read. */
export interface LaidSheet {
  /** Its short name, as it stands on the sheet. */
  name: string;
  title: string;
  lang: string;
  width: number;
  height: number;
  watermark: string;
  pages: Page[];
  tree: Tag;
}
