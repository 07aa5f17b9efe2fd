import { type Painted, isPainting } from "../pdfua/content.js";
import { codesOf, namedFonts, type Font } from "../pdfua/fonts.js";
import { type Value, dict, list } from "../pdfua/objects.js";
import type { Subject } from "../pdfua/rules/rule.js";
import type { Element } from "../pdfua/structure.js";

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

type Matrix = [number, number, number, number, number, number];

interface State {
  matrix: Matrix;
  fill: string;
  stroke: string;
  width: number;
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

/** Follows the operators of a page and notes what they leave on it. */
class Pen {
  private state: State = {
    matrix: [1, 0, 0, 1, 0, 0],
    fill: "#000000",
    stroke: "#000000",
    width: 1,
  };
  private readonly kept: State[] = [];
  private path: { rects: number[][]; points: number[][]; curved: boolean } = noPath();
  private text: { matrix: Matrix; font: Font | undefined; size: number } = {
    matrix: [1, 0, 0, 1, 0, 0],
    font: undefined,
    size: 0,
  };
  private readonly drawn: Drawn;
  private readonly fonts: ReadonlyMap<string, Font | undefined>;
  private readonly elements: ReadonlyMap<string, Element>;

  constructor(
    drawn: Drawn,
    fonts: ReadonlyMap<string, Font | undefined>,
    elements: ReadonlyMap<string, Element>,
  ) {
    this.drawn = drawn;
    this.fonts = fonts;
    this.elements = elements;
  }

  do(operation: Painted): void {
    const { operator, values } = operation;
    const n = values.map(Number);
    if (operator === "q") this.kept.push({ ...this.state });
    else if (operator === "Q") this.state = this.kept.pop() ?? this.state;
    else if (operator === "cm") this.state.matrix = times(n as Matrix, this.state.matrix);
    else if (operator === "scn") this.state.fill = colorOf(n);
    else if (operator === "SCN") this.state.stroke = colorOf(n);
    else if (operator === "w") this.state.width = n[0] ?? 1;
    else if (operator === "Tm") this.text.matrix = n as Matrix;
    else if (operator === "Tf") {
      this.text.font = this.fonts.get(String(values[0]));
      this.text.size = n[1] ?? 0;
    } else if (operator === "m" || operator === "l") this.path.points.push(this.at(n));
    else if (operator === "c") this.path.curved = true;
    else if (operator === "re") this.rect(n);
    else if (operator === "n") this.path = noPath();
    else if (operator === "TJ" || operator === "Tj") this.show(operation);
    else if (isPainting(operation)) this.paint(operation);
  }

  private at([x = 0, y = 0]: readonly number[]): [number, number] {
    const [a, b, c, d, e, f] = this.state.matrix;
    return [a * x + c * y + e, this.drawn.height - (b * x + d * y + f)];
  }

  private rect([x = 0, y = 0, w = 0, h = 0]: readonly number[]): void {
    const [one, other] = [this.at([x, y]), this.at([x + w, y + h])];
    const [left, top] = [Math.min(one[0], other[0]), Math.min(one[1], other[1])];
    this.path.rects.push([left, top, Math.abs(other[0] - one[0]), Math.abs(other[1] - one[1])]);
  }

  private paint(operation: Painted): void {
    const element = this.elementOf(operation);
    const { width, fill, stroke } = this.state;
    const filled = operation.operator.startsWith("f");
    for (const [x = 0, y = 0, w = 0, h = 0] of this.path.rects)
      (filled ? this.drawn.fills : this.drawn.frames).push({
        ...{ x, y, w, h, width, element },
        color: filled ? fill : stroke,
      });
    const [from, to] = this.path.points;
    if (!filled && from && to && !this.path.curved) {
      const [x = 0, y = 0, x2 = 0, y2 = 0] = [...from, ...to];
      this.drawn.lines.push({ x, y, x2, y2, width, color: stroke, element });
    }
    this.path = noPath();
  }

  private show(operation: Painted): void {
    const { font, size, matrix } = this.text;
    const whole = times(matrix, this.state.matrix);
    const shown = codesOf(operation);
    const text = shown.map((code) => font?.unicode.get(code) ?? "").join("");
    const width = shown.reduce(
      (sum, code) => sum + (font?.widths.get(code) ?? font?.usual ?? 0),
      0,
    );
    const moved = gaps(operation.values).reduce((sum, one) => sum + one, 0);
    const name = String(font?.dict["/BaseFont"]);
    this.drawn.texts.push({
      text,
      x: whole[4],
      right: whole[4] + ((width - moved) / 1000) * size - spaceAtEnd(text, font, size),
      base: this.drawn.height - whole[5],
      size: size * Math.hypot(whole[2], whole[3]),
      bold: /bold/i.test(name),
      italic: /italic|oblique/i.test(name),
      family: /B612|DejaVu/.exec(name)?.[0] ?? name,
      level: Math.abs(whole[1]) < 0.001,
      color: this.state.fill,
      element: this.elementOf(operation),
    });
  }

  private elementOf({ marks, page }: Painted): Element | undefined {
    const mcid = marks.findLast((mark) => mark.mcid !== undefined)?.mcid;
    return mcid === undefined ? undefined : this.elements.get(`${page.ref} ${mcid}`);
  }
}

function noPath(): { rects: number[][]; points: number[][]; curved: boolean } {
  return { rects: [], points: [], curved: false };
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[1] * b[2],
    a[0] * b[1] + a[1] * b[3],
    a[2] * b[0] + a[3] * b[2],
    a[2] * b[1] + a[3] * b[3],
    a[4] * b[0] + a[5] * b[2] + b[4],
    a[4] * b[1] + a[5] * b[3] + b[5],
  ];
}

function colorOf(parts: readonly number[]): string {
  const hex = parts.map((part) =>
    Math.round(part * 255)
      .toString(16)
      .padStart(2, "0"),
  );
  return `#${hex.join("").toUpperCase()}`;
}

function gaps(values: readonly Value[]): number[] {
  return values.flat().filter((one) => typeof one === "number");
}

function spaceAtEnd(text: string, font: Font | undefined, size: number): number {
  const spaces = text.length - text.trimEnd().length;
  const code = [...(font?.unicode ?? [])].find(([, shown]) => shown === " ")?.[0];
  const width = code === undefined ? 0 : (font?.widths.get(code) ?? 0);
  return (spaces * width * size) / 1000;
}

/** Whether a form element is a box to tick; else it is a line to write on. */
export function isBox({ pdf }: Subject, element: Element | undefined): boolean {
  return element !== undefined && dict(pdf, element.dict["/A"])["/Role"] === "/cb";
}
