import { type Font, programOf } from "../fonts.js";
import { dict } from "../objects.js";
import { type Check, type Rules, type Subject, unless } from "./rule.js";

/** Clause 7.21: every glyph that is shown is in the file, as wide as it says, and has a meaning. */
export const fontRules: Rules = {
  "7.21.3.1-1": onFonts(({ dict: font }) =>
    ["/Identity-H", "/Identity-V"].includes(String(font["/Encoding"])) ? undefined : "other CMap",
  ),
  "7.21.3.2-1": onFonts(({ descendant, program }) => {
    const maps =
      descendant["/Subtype"] !== "/CIDFontType2" || descendant["/CIDToGIDMap"] !== undefined;
    return maps || !program ? undefined : "no map from codes to glyphs";
  }),
  "7.21.4.1-1": onFonts(({ dict: font, program }) =>
    font["/Subtype"] === "/Type3" || program ? undefined : "not embedded",
  ),
  "7.21.4.1-2": onGlyphs((font, code) => {
    const count = programOf(font)?.numGlyphs ?? 0;
    return code < count ? undefined : `glyph ${code} of ${count} is not embedded`;
  }),
  "7.21.4.2-2": (subject) =>
    onGlyphs(({ descriptor }, code) => {
      const set = subject.pdf.streams[String(descriptor["/CIDSet"])];
      const held = !set || (((set[code >> 3] ?? 0) >> (7 - (code & 7))) & 1) === 1;
      return held ? undefined : `the set of glyphs lacks ${code}`;
    })(subject),
  "7.21.5-1": onGlyphs((font, code) => {
    const program = programOf(font);
    if (!program || code >= program.numGlyphs) return undefined;
    const drawn = (program.getGlyph(code).advanceWidth / program.unitsPerEm) * 1000;
    const said = font.widths.get(code) ?? font.usual;
    return Math.abs(drawn - said) <= 1 ? undefined : `glyph ${code} is ${drawn} wide, not ${said}`;
  }),
  "7.21.7-1": onGlyphs(({ unicode }, code) =>
    unicode.get(code) ? undefined : `glyph ${code} has no meaning`,
  ),
  "7.21.7-2": onGlyphs(({ unicode }, code) =>
    ["\0", "\uFEFF", "\uFFFE"].some((one) => unicode.get(code)?.includes(one))
      ? `glyph ${code} means nothing`
      : undefined,
  ),
  "7.21.8-1": onGlyphs((_, code) =>
    code === 0 ? "shows the glyph of what is missing" : undefined,
  ),
};

function nameOf(font: Font): string {
  return String(font.dict["/BaseFont"]).slice(1);
}

function onFonts(bad: (font: Font) => string | undefined): Check {
  return ({ fonts }) =>
    [...fonts.values()].flatMap((font) => {
      const finding = bad(font);
      return finding === undefined ? [] : [`${nameOf(font)}: ${finding}`];
    });
}

function onGlyphs(bad: (font: Font, code: number) => string | undefined): Check {
  return ({ fonts, shown }) =>
    [...shown].flatMap(([ref, codes]) => {
      const font = fonts.get(ref);
      if (!font) return [`text in a font that is not there: ${ref}`];
      return [...codes].flatMap((code) => {
        const finding = bad(font, code);
        return finding === undefined ? [] : [`${nameOf(font)}: ${finding}`];
      });
    });
}

/** Clauses 7.15, 7.16 and 7.20: what a form, a lock or a drawing used twice may hold. */
export const otherRules: Rules = {
  "7.16-1": ({ pdf }) => {
    const lock = dict(pdf, pdf.trailer["/Encrypt"]);
    const locked = pdf.trailer["/Encrypt"] !== undefined;
    return unless(!locked || (Number(lock["/P"]) & 512) === 512, "locked against screen readers");
  },
  "7.20-2": (subject) =>
    drawings(subject)
      .filter(([, times, content]) => times > 1 && content.includes("/MCID"))
      .map(([ref]) => `${ref} is tagged and drawn more than once`),
};

/** Form XObjects, how often they are drawn, and what they hold. */
function drawings({ pdf, contents }: Subject): [string, number, string][] {
  const times = new Map<string, number>();
  for (const { page, operations } of contents) {
    const named = dict(pdf, dict(pdf, page.dict["/Resources"])["/XObject"]);
    for (const { operator, values } of operations) {
      const ref = String(named[String(values[0])]);
      if (operator === "Do" && dict(pdf, ref)["/Subtype"] === "/Form")
        times.set(ref, (times.get(ref) ?? 0) + 1);
    }
  }
  return [...times].map(([ref, n]) => [ref, n, pdf.streams[ref]?.toString("latin1") ?? ""]);
}
