import type { Element } from "domhandler";
import { isTag } from "domhandler";
import type { Diagnostic, Outcome } from "../diagnostics/diagnostic.js";
import { type Paper, papers } from "../model/printing.js";
import type { LaidSheet, Page, Tag } from "../model/page.js";
import { type Report, type Trouble, setBlock } from "./block.js";
import { type Box, type Building, boxOf } from "./box.js";
import { type Cascade, cascade } from "./cascade.js";
import { type Declaration, readStyles } from "./css.js";
import { hasClass, readHtml } from "./dom.js";
import { type Laid, itemsOf } from "./lines.js";
import { paginate } from "./paginate.js";
import { properties } from "./properties.js";
import { slabsOf } from "./slabs.js";
import { type Sides, type Style, startStyle } from "./style.js";
import { mm } from "./units.js";

/** A style sheet and the file it was read from. */
export interface StyleText {
  text: string;
  file: string;
}

/** Lays one sheet of HTML out on pages, with the tree in which it is read. */
export function layout(html: string, css: StyleText, paper: Paper): Outcome<LaidSheet> {
  const { styles, diagnostics } = readStyles(css.text, css.file);
  const root = readHtml(html);
  if (!root) return { diagnostics };
  const troubles = new Map<string, Trouble>();
  const size = { width: papers[paper].width * mm, height: papers[paper].height * mm };
  const sheet: Sheet = {
    root,
    style: cascade(styles),
    size,
    margin: marginOf(styles.page, root.attribs["data-margin"]),
    report: (trouble) => void troubles.set(JSON.stringify(trouble), trouble),
  };
  let count = 1;
  let { pages, tree } = flow(sheet, count);
  for (let tries = 0; pages.length !== count && tries < 3; tries++) {
    count = pages.length;
    ({ pages, tree } = flow(sheet, count));
  }
  pages.forEach((page, i) => run(sheet, page, i + 1, pages.length));
  const { "data-title": title = "", lang = "en", "data-watermark": watermark = "" } = root.attribs;
  const name = title.split(":")[0] ?? "";
  const value = { name, title, lang, watermark, ...size, pages, tree };
  return { value, diagnostics: [...diagnostics, ...[...troubles.values()].map(said)] };
}

interface Sheet {
  root: Element;
  style: Cascade;
  size: { width: number; height: number };
  margin: Sides<number>;
  report: Report;
}

/** The page's margins: the style sheet's, or those of a sheet that has its own. */
function marginOf(page: readonly Declaration[], own: string | undefined): Sides<number> {
  const style = startStyle("article", undefined);
  for (const { property, value } of page) properties[property]?.(style, value);
  if (own !== undefined) properties["margin"]?.(style, own);
  return style.margin;
}

function flow(sheet: Sheet, count: number): { pages: Page[]; tree: Tag } {
  const { root, size, margin, report } = sheet;
  const tree: Tag = { type: "Document", children: [] };
  const building = { style: sheet.style, page: "1", pages: String(count) };
  const box = boxOf(building, root, undefined, tree);
  const width = size.width - margin[1] - margin[3];
  const height = size.height - margin[0] - margin[2];
  const mark = (name: string, text: string, more = ""): Laid =>
    setMark(sheet, building, box.style, { name, text, more }, width);
  const pages = paginate(slabsOf(box, width, height, report), {
    x: margin[3],
    y: margin[0],
    height,
    resume: (within, still) =>
      mark("resumed", within.element.attribs["data-continued"] ?? "", still),
    goesOn: (_, page) =>
      mark("goes-on", (root.attribs["data-goes-on"] ?? "").replace("{page}", String(page))),
  });
  return { pages, tree };
}

function setMark(
  { report }: Sheet,
  building: Building,
  parent: Style,
  { name, text, more }: { name: string; text: string; more: string },
  width: number,
): Laid {
  const element = readHtml(`<p class="${name}"></p>`);
  if (!element) return { height: 0, items: [], inside: [] };
  const box: Box = boxOf(building, element, parent, undefined);
  box.inlines.push({ is: "text", text, style: box.style, content: undefined });
  if (more !== "") {
    const style = { ...box.style, bold: false };
    box.inlines.push({ is: "break" }, { is: "text", text: more, style, content: undefined });
  }
  const laid = setBlock(box, width, report);
  return { ...laid, height: laid.height + box.style.margin[2] };
}

/** Sets the running head and foot of one page: the head ends above the text, the foot begins below it. */
function run(sheet: Sheet, page: Page, number: number, count: number): void {
  const { root, size, margin, style, report } = sheet;
  const parent = style(root, undefined);
  const building = { style, page: String(number), pages: String(count) };
  const width = size.width - margin[1] - margin[3];
  for (const element of root.children.filter(isTag).filter((one) => hasClass(one, "running"))) {
    if (number === 1 && hasClass(element, "not-first")) continue;
    const box = boxOf(building, element, parent, undefined);
    const laid = setBlock(box, width, report);
    const y =
      element.name === "header"
        ? margin[0] - laid.height - box.style.margin[2]
        : size.height - margin[2] + box.style.margin[0];
    page.items.push(...itemsOf({ laid, x: margin[3], y }));
  }
}

function said(trouble: Trouble): Diagnostic {
  if ("tooTall" in trouble)
    return {
      code: "too-long",
      message: `The text of '${trouble.tooTall}' does not fit its place.`,
      hints: ["Take larger labels, or print them on plain paper."],
      related: [],
    };
  const code = (trouble.glyph.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
  return {
    code: "missing-glyph",
    message: `No embedded font can draw '${trouble.glyph}' (U+${code}).`,
    hints: ["Write it in another way."],
    related: [],
  };
}
