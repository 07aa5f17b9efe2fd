import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import * as fontkit from "fontkit";
import type { Face } from "../model/page.js";
import { unpacked } from "./woff.js";

const files: Record<Face, string> = {
  regular: "@fontsource/b612/files/b612-latin-400-normal.woff",
  bold: "@fontsource/b612/files/b612-latin-700-normal.woff",
  italic: "@fontsource/b612/files/b612-latin-400-italic.woff",
  wide: "dejavu-fonts-ttf/ttf/DejaVuSans.ttf",
  "wide-bold": "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf",
};

/** Ascent and descent of the faces, as shares of the font size. */
export const ascent = 0.76;
export const descent = 0.24;

const programs = new Map<Face, Buffer>();
const fonts = new Map<Face, fontkit.Font>();
const widths = new Map<string, number>();

/** The font program of a face, unpacked. */
export function fontFile(face: Face): Buffer {
  const known = programs.get(face);
  if (known) return known;
  const program = unpacked(readFileSync(createRequire(import.meta.url).resolve(files[face])));
  programs.set(face, program);
  return program;
}

function fontOf(face: Face): fontkit.Font {
  const known = fonts.get(face);
  if (known) return known;
  const font = fontkit.create(fontFile(face));
  if (!("layout" in font)) throw new Error(`${files[face]} holds more than one font`);
  fonts.set(face, font);
  return font;
}

/** The width of a text in points, set in one face at one size. */
export function widthOf(text: string, face: Face, size: number): number {
  return text.split(/(?= )/).reduce((sum, word) => sum + emWidth(word, face) * size, 0);
}

function emWidth(word: string, face: Face): number {
  const key = `${face} ${word}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  const font = fontOf(face);
  const width = font.layout(word).advanceWidth / font.unitsPerEm;
  widths.set(key, width);
  return width;
}

/** A stretch of text that one face can draw. */
export interface Run {
  text: string;
  face: Face;
}

/** Cuts a text into runs by the face that has each character; what none has is given to `missing`. */
export function runsOf(text: string, face: Face, missing: (character: string) => void): Run[] {
  const runs: Run[] = [];
  const stand: Face = face === "bold" ? "wide-bold" : "wide";
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const has = (one: Face): boolean => fontOf(one).hasGlyphForCodePoint(code);
    const last = runs.at(-1);
    const own: Face = has(face) ? face : stand;
    const chosen: Face = character === " " && last ? last.face : own;
    if (chosen === stand && !has(stand)) missing(character);
    if (last && last.face === chosen) last.text += character;
    else runs.push({ text: character, face: chosen });
  }
  return runs;
}
