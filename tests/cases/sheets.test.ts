import { describe, expect, it } from "vitest";
import { open, plan } from "../../src/index.js";
import { layout } from "../../src/layout/layout.js";
import { print } from "../../src/pipeline.js";
import { type TextFile } from "../validate/mangle.js";
import { laidOut } from "./read-case.js";

describe("a style sheet outside the documented subset [bad-style]", () => {
  const said = (text: string) => {
    const { diagnostics } = layout("<article><p>x</p></article>", { text, file: "s.css" }, "a4");
    return diagnostics.map(({ code, span }) => [code, text.slice(span?.start, span?.end)]);
  };

  it("is told its place: a property, an at-rule", () => {
    expect(said("p { float: left; }")).toEqual([["bad-style", "float: left"]]);
    expect(said("@media print { p { color: #000000; } }")[0]?.[0]).toBe("bad-style");
  });

  it("passes with what the subset holds", () => {
    expect(said("p { color: #000000; }")).toEqual([]);
  });
});

describe("text that no embedded font can draw [missing-glyph]", () => {
  const printed = (name: string) => {
    const text = `recipe: lamp\nname: ${name}\nthings: { lamp: lamp }\nwork:\n  - clean: lamp\n`;
    const files: TextFile[] = [{ path: "tiny/strip/lamp.yaml", text }];
    return laidOut({ files, without: [] }, (folder) => {
      const opened = open(folder).value;
      const made = opened && plan(opened, { job: "lamp", fitted: {} }).value;
      if (!opened || !made) throw new Error("the test's own library cannot be planned");
      return print(opened, made, { paper: "a4", large: false, draft: true, html: false });
    });
  };

  it("is named, and nothing is printed", async () => {
    const { value, diagnostics } = await printed("座席 lamp");
    expect(value).toBeUndefined();
    expect(diagnostics.map((d) => [d.code, d.message])).toEqual([
      ["missing-glyph", "No embedded font can draw '座' (U+5EA7)."],
      ["missing-glyph", "No embedded font can draw '席' (U+5E2D)."],
    ]);
  });

  it.each(["Žárovka", "Лампа", "Λάμπα", "5 Ω ± 1 µm"])("prints: %s", async (name) => {
    const { value, diagnostics } = await printed(name);
    expect(diagnostics).toEqual([]);
    expect(value?.[0]?.bytes.subarray(0, 5).toString()).toBe("%PDF-");
  });
});
