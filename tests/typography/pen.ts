import { type Painted, isPainting } from "../pdfua/content.js";
import { type Font, codesOf } from "../pdfua/fonts.js";
import type { Value } from "../pdfua/objects.js";
import type { Element } from "../pdfua/structure.js";
import type { Drawn } from "./drawn.js";

type Matrix = [number, number, number, number, number, number];

/** What `q` keeps and `Q` brings back. */
interface State {
  matrix: Matrix;
  fill: string;
  stroke: string;
  width: number;
}

/** The path that is being drawn, in points from the upper left corner of the page. */
interface Path {
  rects: { x: number; y: number; w: number; h: number }[];
  points: { x: number; y: number }[];
  curved: boolean;
}

const still: Matrix = [1, 0, 0, 1, 0, 0];

/** Follows the operators of a page and notes what they leave on it. */
export class Pen {
  private state: State = { matrix: still, fill: "#000000", stroke: "#000000", width: 1 };
  private readonly kept: State[] = [];
  private path: Path = noPath();
  private text: { matrix: Matrix; font: Font | undefined; size: number };
  private readonly drawn: Drawn;
  private readonly fonts: ReadonlyMap<string, Font | undefined>;
  private readonly elements: ReadonlyMap<string, Element>;

  /** What each operator that paints nothing does, with its values as numbers. */
  private readonly moves: Record<string, (n: number[], values: readonly Value[]) => void> = {
    q: () => this.kept.push({ ...this.state }),
    Q: () => (this.state = this.kept.pop() ?? this.state),
    cm: (n) => (this.state.matrix = times(n as Matrix, this.state.matrix)),
    scn: (n) => (this.state.fill = colorOf(n)),
    SCN: (n) => (this.state.stroke = colorOf(n)),
    w: ([width = 1]) => (this.state.width = width),
    Tm: (n) => (this.text.matrix = n as Matrix),
    Tf: ([, size = 0], [name]) =>
      (this.text = { ...this.text, size, font: this.fonts.get(String(name)) }),
    m: ([x = 0, y = 0]) => this.path.points.push(this.at(x, y)),
    l: ([x = 0, y = 0]) => this.path.points.push(this.at(x, y)),
    c: () => (this.path.curved = true),
    re: ([x = 0, y = 0, w = 0, h = 0]) => this.rect(this.at(x, y), this.at(x + w, y + h)),
    n: () => (this.path = noPath()),
  };

  constructor(
    drawn: Drawn,
    fonts: ReadonlyMap<string, Font | undefined>,
    elements: ReadonlyMap<string, Element>,
  ) {
    this.drawn = drawn;
    this.fonts = fonts;
    this.elements = elements;
    this.text = { matrix: still, font: undefined, size: 0 };
  }

  do(operation: Painted): void {
    const { operator, values } = operation;
    if (operator === "TJ" || operator === "Tj") this.show(operation);
    else if (isPainting(operation)) this.paint(operation);
    else this.moves[operator]?.(values.map(Number), values);
  }

  private at(x: number, y: number): { x: number; y: number } {
    const [a, b, c, d, e, f] = this.state.matrix;
    return { x: a * x + c * y + e, y: this.drawn.height - (b * x + d * y + f) };
  }

  private rect(a: { x: number; y: number }, b: { x: number; y: number }): void {
    const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
    this.path.rects.push({ x, y, w: Math.abs(b.x - a.x), h: Math.abs(b.y - a.y) });
  }

  private paint(operation: Painted): void {
    const element = this.elementOf(operation);
    const { width, fill, stroke } = this.state;
    const filled = operation.operator.startsWith("f");
    const color = filled ? fill : stroke;
    const rects = this.path.rects.map((rect) => ({ ...rect, width, color, element }));
    (filled ? this.drawn.fills : this.drawn.frames).push(...rects);
    const [from, to] = this.path.points;
    if (!filled && from && to && !this.path.curved)
      this.drawn.lines.push({ ...from, x2: to.x, y2: to.y, width, color, element });
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

function noPath(): Path {
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
