import fc from "fast-check";

/** A file of a library. */
export interface TextFile {
  path: string;
  text: string;
}

type Mangle = (files: readonly TextFile[]) => TextFile[];

const scraps = [
  ":",
  "- ",
  "{",
  "}",
  "[",
  "]",
  '"',
  "&a ",
  "*a",
  "\n",
  "  ",
  "0",
  "-1",
  "null",
  "~",
];
const odd = [
  "constructor",
  "__proto__",
  "to-string",
  "value-of",
  "@",
  "%",
  "\u0000",
  "\uFEFF",
  "Ω",
];
const word = /[a-z0-9-]+/g;

const one =
  (wanted: number, change: (text: string) => string): Mangle =>
  (files) =>
    files.map(({ path, text }, i) => ({
      path,
      text: i === wanted % files.length ? change(text) : text,
    }));

const cutAndPut = fc
  .record({
    file: fc.nat(),
    at: fc.nat(),
    cut: fc.nat(12),
    put: fc.constantFrom("", ...scraps, ...odd),
  })
  .map(({ file, at, cut, put }) =>
    one(file, (text) => {
      const start = at % (text.length + 1);
      return text.slice(0, start) + put + text.slice(start + cut);
    }),
  );

const swapWord = fc
  .record({ file: fc.nat(), at: fc.nat(), from: fc.nat(), put: fc.constantFrom(undefined, ...odd) })
  .map(({ file, at, from, put }): Mangle => (files) => {
    const pool = files.flatMap(({ text }) => text.match(word) ?? []);
    return one(file, (text) => {
      const hits = [...text.matchAll(word)];
      const hit = hits[at % Math.max(1, hits.length)];
      const other = put ?? pool[from % Math.max(1, pool.length)] ?? "";
      return hit ? text.slice(0, hit.index) + other + text.slice(hit.index + hit[0].length) : text;
    })(files);
  });

const renameAll = fc
  .record({ at: fc.nat(), put: fc.constantFrom(...odd) })
  .map(({ at, put }): Mangle => (files) => {
    const pool = [...new Set(files.flatMap(({ text }) => text.match(word) ?? []))];
    const name = pool[at % Math.max(1, pool.length)];
    const swap = (text: string): string =>
      text.replaceAll(word, (found) => (found === name ? put : found));
    return files.map(({ path, text }) => ({ path, text: swap(text) }));
  });

const shiftLine = fc
  .record({ file: fc.nat(), at: fc.nat(), times: fc.constantFrom(0, 2), indent: fc.nat(3) })
  .map(({ file, at, times, indent }) =>
    one(file, (text) => {
      const lines = text.split("\n");
      const hit = at % lines.length;
      const line = `${" ".repeat(indent)}${lines[hit] ?? ""}`;
      return lines.toSpliced(hit, 1, ...Array.from({ length: times }, () => line)).join("\n");
    }),
  );

/** One to three edits of any sort: letters, words, a name throughout, lines. */
export const mangles: fc.Arbitrary<Mangle> = fc
  .array(fc.oneof(cutAndPut, swapWord, renameAll, shiftLine), { minLength: 1, maxLength: 3 })
  .map((edits) => (files) => edits.reduce<TextFile[]>((now, edit) => edit(now), [...files]));
