import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { UnreadablePath } from "../../src/diagnostics/unreadable-path.js";
import { readLibrary, readOne } from "../../src/read/read.js";

let base = "";
let library = "";

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "countback-read-"));
  library = join(base, "library");
  mkdirSync(library);
});
afterEach(() => rmSync(base, { recursive: true }));

const write = (path: string, text: string): void => writeFileSync(join(base, path), text);
const told = () => readLibrary(library).diagnostics.map((d) => [d.code, d.span?.file]);

describe("a path that leaves the library", () => {
  it("is refused as a link to a file outside", () => {
    write("outside.yaml", "recipe: outside\nname: Outside\n");
    symlinkSync("../outside.yaml", join(library, "inside.yaml"));
    expect(told()).toEqual([["outside-library", `${library}/inside.yaml`]]);
    expect(readLibrary(library).value).toEqual([]);
  });

  it("is not followed as a link to a folder outside", () => {
    mkdirSync(join(base, "other"));
    write("other/outside.yaml", "recipe: outside\nname: Outside\n");
    write("library/own.yaml", "recipe: own\nname: Own\n");
    symlinkSync("../other", join(library, "other"));
    expect(readLibrary(library).value?.map((s) => s.file)).toEqual([`${library}/own.yaml`]);
  });

  it("is allowed as a link that stays inside", () => {
    write("library/own.yaml", "recipe: own\nname: Own\n");
    symlinkSync("own.yaml", join(library, "second.yaml"));
    expect(told()).toEqual([]);
    expect(readLibrary(library).value?.length).toBe(2);
  });
});

describe("a path that cannot be read", () => {
  it.each([
    ["a folder that is not there", "missing", "there is no such file or folder"],
    ["a folder without recipes", "library", "holds no recipes"],
  ])("is named: %s", (_, path, words) => {
    expect(() => readLibrary(join(base, path))).toThrow(UnreadablePath);
    expect(() => readLibrary(join(base, path))).toThrow(words);
  });

  it("is named: a file where a library is wanted", () => {
    write("file.yaml", "recipe: own\n");
    expect(() => readLibrary(join(base, "file.yaml"))).toThrow("it is not a folder");
  });

  it("is named: a folder where a file is wanted", () => {
    expect(() => readOne(library)).toThrow("it is a folder");
  });

  it("is named: a link that leads nowhere", () => {
    write("library/own.yaml", "recipe: own\nname: Own\n");
    symlinkSync("nowhere.yaml", join(library, "gone.yaml"));
    expect(() => readLibrary(library)).toThrow("there is no such file or folder");
  });
});

it("files are read in the order of their names, not of the disk", () => {
  for (const name of ["c", "a", "b"]) write(`library/${name}.yaml`, `recipe: ${name}\nname: N\n`);
  expect(readLibrary(library).value?.map((s) => s.file.slice(-6))).toEqual([
    "a.yaml",
    "b.yaml",
    "c.yaml",
  ]);
});
