import { list } from "../pdfua/objects.js";
import type { Subject } from "../pdfua/rules/rule.js";
import type { Element } from "../pdfua/structure.js";
import { namedFonts } from "../pdfua/fonts.js";
import { Pen } from "./pen.js";

/** What lies under a stroke, a fill or a text: its element, or nothing where it is decoration. */
interface Ink {
  color: string;
  element: Element | undefined;
}

/** A run of text as it stands on the page, in points from the upper left corner. */
export interface Text extends Ink {
  text: string;
  x: number;
  right: number;
  base: number;
  size: number;
  bold: boolean;
  italic: boolean;
  family: string;
  /** Set along the page, and not across it as a watermark is. */
  level: boolean;
}

/** A straight line. */
export interface Line extends Ink {
  x: number;
  y: number;
  x2: number;
  y2: number;
  width: number;
}

/** A rectangle, filled or drawn round. */
export interface Rect extends Ink {
  x: number;
  y: number;
  w: number;
  h: number;
  width: number;
}

/** All that is drawn on one page, read back from its operators. */
export interface Drawn {
  ref: string;
  width: number;
  height: number;
  texts: Text[];
  lines: Line[];
  fills: Rect[];
  frames: Rect[];
}

/** Reads every page's drawing. */
export function drawnPages(subject: Subject): Drawn[] {
  const elements = new Map(
    subject.elements.flatMap((element) =>
      element.content.flatMap((one): [string, Element][] =>
        "mcid" in one ? [[`${one.page} ${one.mcid}`, element]] : [],
      ),
    ),
  );
  return subject.contents.map(({ page, operations }) => {
    const [, , width, height] = list(subject.pdf, page.dict["/MediaBox"]).map(Number);
    const drawn: Drawn = {
      ref: page.ref,
      width: width ?? 0,
      height: height ?? 0,
      texts: [],
      lines: [],
      fills: [],
      frames: [],
    };
    const fonts = Object.entries(namedFonts(subject.pdf, page)).map(([name, ref]) => {
      const font = subject.fonts.get(String(ref));
      return [name, font] as const;
    });
    const pen = new Pen(drawn, new Map(fonts), elements);
    for (const operation of operations) pen.do(operation);
    return drawn;
  });
}
