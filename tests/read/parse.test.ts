import { describe, expect, it } from "vitest";
import { parse } from "../../src/read/parse.js";

const slice = (text: string, path: (string | number)[], key = false): string => {
  const source = parse("f.yaml", text).value;
  const span = key ? source?.keySpanOf(path) : source?.spanOf(path);
  return text.slice(span?.start, span?.end);
};

describe("positions", () => {
  const text = "recipe: seat\nstrip:\n  - undo: nut\n    count: 2\n";

  it("are those of the value, or of its key", () => {
    expect(slice(text, ["strip", 0, "count"])).toBe("2");
    expect(slice(text, ["strip", 0, "count"], true)).toBe("count");
  });

  it("fall back to the nearest value above one that is not there", () => {
    expect(slice(text, ["recipe", "none"])).toBe("seat");
  });
});

describe("YAML 1.2", () => {
  it("knows no other truth values, no octal by a leading zero and no sixties", () => {
    const value = parse("f.yaml", "a: yes\nb: 010\nc: 1:30\n").value?.value;
    expect(value).toEqual({ a: "yes", b: 10, c: "1:30" });
  });

  it("tells every syntax error, not the first only", () => {
    const { diagnostics, value } = parse("f.yaml", 'a: "x" y\nb: [1, 2\nc: }\n');
    expect(diagnostics.length).toBeGreaterThan(1);
    expect(new Set(diagnostics.map((d) => d.code))).toEqual(new Set(["yaml-syntax"]));
    expect(value).toBeUndefined();
  });
});
