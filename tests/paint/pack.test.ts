import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { beforeAll, describe, expect, it } from "vitest";
import { print } from "../../src/index.js";
import { countback } from "../countback.js";
import { fieldsOf, flat, has, run, treesOf } from "../pdf.js";
import { planned, small } from "../plans.js";

const bare = `%PDF-1.7
1 0 obj <</Type /Catalog /Pages 2 0 R>> endobj
2 0 obj <</Type /Pages /Kids [3 0 R] /Count 1>> endobj
3 0 obj <</Type /Page /Parent 2 0 R /MediaBox [0 0 99 99]>> endobj
trailer <</Root 1 0 R>>
`;
const folder = mkdtempSync(join(tmpdir(), "countback-pack-"));
const { opened, value: plan } = planned({ job: "bar" });

/** Prints all sheets of the bar job and gives each file's bytes by name. */
async function sheets(fillable: boolean): Promise<Map<string, Buffer>> {
  if (!plan) throw new Error("no plan");
  const options = { paper: "a4" as const, large: false, draft: false, html: false, fillable };
  const { value = [] } = await print(opened, plan, options);
  for (const { name, bytes } of value) writeFileSync(join(folder, name), bytes);
  return new Map(value.map(({ name, bytes }) => [name, bytes]));
}

/** What the guide calls each sheet. */
const titles: Readonly<Record<string, string>> = {
  worth: "Worth it?",
  gather: "Gather list",
  hazards: "Hazard sheet",
  layers: "Layers",
  times: "Time plan",
  checklist: "Checklist",
  count: "Count sheet",
  labels: "Bag labels",
  measurements: "Measurements",
  welds: "Weld sheet",
  road: "Not for the road",
  handover: "Handover note",
  apprentice: "Apprentice",
};
const read = (bytes: Uint8Array) =>
  getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;

describe("the joined pack", () => {
  let files: Map<string, Buffer>;
  const pack = (): Buffer => files.get("bar-pack.pdf") ?? Buffer.alloc(0);
  beforeAll(async () => {
    files = await sheets(false);
  });

  it("holds the pages of every sheet, numbered within each", async () => {
    const counts: number[] = [];
    for (const [name, bytes] of files)
      if (name !== "bar-pack.pdf") counts.push((await read(bytes)).numPages);
    const document = await read(pack());
    expect(counts.length).toBeGreaterThan(5);
    expect(document.numPages).toBe(counts.reduce((sum, one) => sum + one, 0));
    const labels = (await document.getPageLabels()) ?? [];
    const starts = counts.map((_, i) => counts.slice(0, i).reduce((sum, one) => sum + one, 0));
    const firsts = starts.map((at) => labels[at]);
    expect(firsts).toContain("Checklist 1");
    expect(firsts).toContain("Count sheet 1");
    expect(firsts.every((label) => label?.endsWith(" 1"))).toBe(true);
  });

  it("tells in its guide how many pages each other sheet has", async () => {
    const guide = await (await read(files.get("bar-guide.pdf") ?? Buffer.alloc(0))).getPage(1);
    const items = (await guide.getTextContent()).items.map((one) => ("str" in one ? one.str : ""));
    const text = items
      .map((one) => one || " ")
      .join("")
      .replace(/\s+/g, " ");
    const others = [...files].filter(([name]) => !/guide|pack/.test(name));
    const told = others.map(([name]) => {
      const title = titles[name.slice("bar-".length, -".pdf".length)] ?? "";
      const [, number] = text.slice(text.indexOf(`${title} `) + title.length).split(" ");
      return [name, Number(number)];
    });
    const counted = others.map(async ([name, file]) => [name, (await read(file)).numPages]);
    expect(told).toEqual(await Promise.all(counted));
  });

  it("tells in its guide on which page of the checklist each heading stands", async () => {
    const guide = await read(files.get("bar-guide.pdf") ?? Buffer.alloc(0));
    const checklist = await read(files.get("bar-checklist.pdf") ?? Buffer.alloc(0));
    const wordsOf = async (pdf: typeof guide, n: number): Promise<string> => {
      const { items } = await (await pdf.getPage(n)).getTextContent();
      return items
        .map((one) => ("str" in one ? one.str || " " : ""))
        .join("")
        .replace(/\s+/g, " ");
    };
    const pagesOf = async (pdf: typeof guide): Promise<string[]> =>
      Promise.all(Array.from({ length: pdf.numPages }, (_, i) => wordsOf(pdf, i + 1)));
    const told =
      (await pagesOf(guide)).join(" ").split("What stands where in the checklist")[1] ?? "";
    const printed = await pagesOf(checklist);
    const blocks = [...told.matchAll(/([A-Z][^·–\d]*?) · ([\d.]+(?:–[\d.]+)?) (\d+)(?= )/g)];
    expect(blocks.length).toBeGreaterThan(5);
    for (const [, name = "", steps = "", page = ""] of blocks)
      expect(printed[Number(page) - 1], `${name} ${page}`).toContain(`${name} · ${steps}`);
  });

  it("has a bookmark for each sheet, and the headings of the sheet below it", async () => {
    const outline = (await (await read(pack())).getOutline()) ?? [];
    expect(outline).toHaveLength(files.size - 1);
    const checklist = outline.find(({ title }) => title === "Checklist: New cross bar");
    expect(checklist?.items.length).toBeGreaterThan(0);
  });

  it("carries the plan and every recipe it was made from, byte for byte", async () => {
    const carried = (await (await read(pack())).getAttachments()) as Record<
      string,
      { content: Uint8Array }
    >;
    const textOf = (name: string): string => Buffer.from(carried[name]?.content ?? []).toString();
    const bare = JSON.stringify(plan, (key, part: unknown) =>
      key === "origin" ? undefined : part,
    );
    expect(JSON.parse(textOf("plan.json"))).toEqual(JSON.parse(bare));
    expect(textOf("01-range.yaml")).toBe(readFileSync(`${small}/tiny/range.yaml`, "utf8"));
    const bar = Object.keys(carried).find((name) => name.endsWith("-bar.yaml")) ?? "";
    expect(textOf(bar)).toBe(readFileSync(`${small}/tiny/repair/bar.yaml`, "utf8"));
  });

  it("is proven again out of the PDF by check, as each sheet is; a PDF without a plan is refused", () => {
    const check = (name: string) => countback(["check", join(folder, name), "--library", small]);
    for (const name of files.keys()) expect({ name, ...check(name) }).toMatchObject({ code: 0 });
    writeFileSync(join(folder, "bare.pdf"), bare);
    const other = check("bare.pdf");
    expect(other.code).toBe(1);
    expect(other.stderr).toContain("[no-plan]");
    writeFileSync(join(folder, "torn.pdf"), pack().subarray(0, 2000));
    expect(check("torn.pdf").code).toBe(2);
  });

  it.runIf(has("qpdf"))("is sound to qpdf", () => {
    expect(run("qpdf", ["--check", join(folder, "bar-pack.pdf")])).toContain("No syntax");
  });
});

describe("sheets to fill in on a screen", () => {
  let bytes: Buffer;
  let paper: Buffer;
  beforeAll(async () => {
    paper = (await sheets(false)).get("bar-checklist.pdf") ?? Buffer.alloc(0);
    bytes = (await sheets(true)).get("bar-checklist.pdf") ?? Buffer.alloc(0);
  });

  it("have a field for every box and line of the paper, which has none", async () => {
    const trees = await treesOf(paper);
    const printed = trees.flatMap(flat).filter(({ role }) => role === "Form");
    const fields = await fieldsOf(bytes);
    expect(fields.length).toBe(printed.length);
    expect(new Set(fields.map((one) => one.name)).size).toBe(fields.length);
    expect(await fieldsOf(paper)).toEqual([]);
  });

  it("have a field for every cell to write in, named by its row and the heading of its column", async () => {
    const files = await sheets(true);
    const cellsOf = async (sheet: string): Promise<string[]> => {
      const trees = await treesOf(files.get(`bar-${sheet}.pdf`) ?? Buffer.alloc(0));
      const cells = trees.flatMap(flat).filter(({ role }) => role === "TD");
      return cells.flatMap(({ children }) =>
        children.flatMap((one) => (one.role === "Form" ? [one.alt ?? ""] : [])),
      );
    };
    const counts = await cellsOf("count");
    for (const heading of ["Found", "Spoiled", "Lost", "Counted"])
      expect(counts.filter((name) => name.endsWith(`, ${heading}`)).length).toBeGreaterThan(3);
    expect(counts).toContain("added or found during the work, line 3, Why, and who wrote it");
    expect(await cellsOf("handover")).toContain(
      "Half done where in it, what is loose, Written down",
    );
    const handover = await fieldsOf(files.get("bar-handover.pdf") ?? Buffer.alloc(0));
    expect(handover.filter(({ multiline }) => multiline)).toHaveLength(6);
  });

  it("keep what pdf.js ticks and writes, and poppler draws it", async () => {
    const document = await read(bytes);
    const fields = await fieldsOf(bytes);
    const box = fields.find((one) => one.type === "checkbox");
    const line = fields.find((one) => one.type === "text");
    if (!box || !line) throw new Error("no fields");
    document.annotationStorage.setValue(box.id, { value: true });
    document.annotationStorage.setValue(line.id, { value: "0482" });
    const saved = await document.saveDocument();
    const after = await fieldsOf(saved);
    expect(after.find((one) => one.name === box.name)?.value).toBe("On");
    expect(after.find((one) => one.name === line.name)?.value).toBe("0482");
    if (!has("pdftoppm")) return;
    const [blank, filled] = [bytes, saved].map((file, i) => {
      const path = join(folder, `fill-${i}`);
      writeFileSync(`${path}.pdf`, file);
      run("pdftoppm", ["-r", "50", "-f", "1", "-l", "2", "-png", `${path}.pdf`, path]);
      const sheet = run("sh", ["-c", `cat ${path}-*.png | cksum`]);
      return sheet;
    });
    expect(filled).not.toBe(blank);
  });
});
