import * as fontkit from "fontkit";
import type { PageContent, Painted } from "./content.js";
import {
  type Dict,
  type PageObject,
  type Pdf,
  type Value,
  dict,
  list,
  pagesOf,
} from "./objects.js";
import { operationsOf } from "./tokens.js";

/** A font of a page's resources. */
export interface Font {
  ref: string;
  dict: Dict;
  descendant: Dict;
  descriptor: Dict;
  program: Buffer | undefined;
  unicode: Map<number, string>;
  widths: Map<number, number>;
  usual: number;
}

/** Every font that a page may use, by its reference. */
export function fontsOf(pdf: Pdf): Map<string, Font> {
  const refs = pagesOf(pdf).flatMap((page) => Object.values(namedFonts(pdf, page)));
  return new Map([...new Set(refs.map(String))].map((ref) => [ref, fontOf(pdf, ref)]));
}

/** The fonts of a page by the names that its content uses. */
export function namedFonts(pdf: Pdf, page: PageObject): Dict {
  return dict(pdf, dict(pdf, page.dict["/Resources"])["/Font"]);
}

function fontOf(pdf: Pdf, ref: string): Font {
  const font = dict(pdf, ref);
  const descendant = dict(pdf, list(pdf, font["/DescendantFonts"])[0]);
  const descriptor = dict(pdf, (descendant["/FontDescriptor"] ?? font["/FontDescriptor"]) as Value);
  const file = descriptor["/FontFile2"] ?? descriptor["/FontFile3"] ?? descriptor["/FontFile"];
  const usual = descendant["/DW"];
  return {
    ref,
    dict: font,
    descendant,
    descriptor,
    program: pdf.streams[String(file)],
    unicode: unicodeOf(pdf.streams[String(font["/ToUnicode"])]),
    widths: widthsOf(list(pdf, descendant["/W"])),
    usual: typeof usual === "number" ? usual : 1000,
  };
}

/** Reads `/W`: a first code with a list of widths, or first, last and one width. */
function widthsOf(entries: readonly Value[]): Map<number, number> {
  const widths = new Map<number, number>();
  for (let i = 0; i < entries.length;) {
    const [first, second, third] = [Number(entries[i]), entries[i + 1], Number(entries[i + 2])];
    if (Array.isArray(second)) {
      second.forEach((width, k) => widths.set(first + k, Number(width)));
      i += 2;
    } else {
      for (let code = first; code <= Number(second); code++) widths.set(code, third);
      i += 3;
    }
  }
  return widths;
}

/** Reads the bfchar and bfrange lines of a ToUnicode map. */
function unicodeOf(stream: Buffer | undefined): Map<number, string> {
  const unicode = new Map<number, string>();
  for (const { operator, values } of operationsOf(stream ?? Buffer.alloc(0))) {
    if (operator === "endbfchar")
      for (let i = 0; i + 1 < values.length; i += 2)
        unicode.set(codeOf(values[i]), utf16(values[i + 1]));
    if (operator !== "endbfrange") continue;
    for (let i = 0; i + 2 < values.length; i += 3) {
      const [first, last, to] = [codeOf(values[i]), codeOf(values[i + 1]), values[i + 2]];
      for (let code = first; code <= last; code++)
        unicode.set(code, Array.isArray(to) ? utf16(to[code - first]) : after(to, code - first));
    }
  }
  return unicode;
}

function codeOf(value: Value | undefined): number {
  return parseInt(String(value).slice(2), 16);
}

function utf16(value: Value | undefined): string {
  return Buffer.from(String(value).slice(2), "hex").swap16().toString("utf16le");
}

function after(value: Value | undefined, n: number): string {
  const text = utf16(value);
  return text.slice(0, -1) + String.fromCharCode(text.charCodeAt(text.length - 1) + n);
}

/** The two-byte codes that an operation shows; none where it shows no text. */
export function codesOf({ operator, values }: Painted): number[] {
  if (!["Tj", "TJ", "'", '"'].includes(operator)) return [];
  return values
    .flat()
    .filter((one) => typeof one === "string")
    .flatMap((one) => [...one.slice(2).matchAll(/..../g)].map(([code]) => parseInt(code, 16)));
}

/** The codes that are shown in each font, by the font's reference. */
export function shownCodes(pdf: Pdf, contents: readonly PageContent[]): Map<string, Set<number>> {
  const shown = new Map<string, Set<number>>();
  for (const { page, operations } of contents) {
    const named = namedFonts(pdf, page);
    let ref = "";
    for (const operation of operations) {
      if (operation.operator === "Tf") ref = String(named[String(operation.values[0])]);
      const codes = codesOf(operation);
      const set = shown.get(ref) ?? new Set();
      for (const code of codes) set.add(code);
      if (codes.length > 0) shown.set(ref, set);
    }
  }
  return shown;
}

/** An embedded font program as fontkit reads it; nothing where it cannot. */
export function programOf(font: Font): fontkit.Font | undefined {
  if (!font.program) return undefined;
  const program = fontkit.create(font.program);
  return "layout" in program ? program : undefined;
}
