import { readFileSync, readdirSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { expect, it } from "vitest";
import { codes } from "../src/diagnostics/codes.js";

const stages = "read validate find resolve arrange prove explain rate fill layout paint".split(" ");
const files = readdirSync("src", { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => join("src", file));

const importsOf = (file: string): string[] => {
  const text = readFileSync(file, "utf8");
  const paths = [...text.matchAll(/from "(\.[^"]+)"/g)].map((match) => match[1] ?? "");
  return paths.map((path) => join(dirname(file), path));
};

const stageOf = (path: string): string | undefined =>
  stages.find((stage) => path.startsWith(`src/${stage}/`));

it("no stage imports another", () => {
  const bad = files.flatMap((file) => {
    const own = stageOf(file);
    const others = importsOf(file).filter(
      (path) => stageOf(path) !== undefined && stageOf(path) !== own,
    );
    return own === undefined ? [] : others.map((path) => `${file} imports ${path}`);
  });
  expect(bad).toEqual([]);
});

it("only the pipeline imports stages", () => {
  const outside = files.filter(
    (file) => stageOf(file) === undefined && !file.startsWith("src/pipeline"),
  );
  const bad = outside.flatMap((file) =>
    importsOf(file).flatMap((path) => (stageOf(path) === undefined ? [] : [`${file}: ${path}`])),
  );
  expect(outside.length).toBeGreaterThan(10);
  expect(bad).toEqual([]);
});

it("model, diagnostics and figures import no stage", () => {
  const low = files.filter((file) => /^src\/(model|diagnostics|figures)\//.test(file));
  expect(low.length).toBeGreaterThan(5);
  expect(low.flatMap(importsOf).filter((path) => stageOf(path) !== undefined)).toEqual([]);
});

it("nothing that decides output asks the clock, chance or the locale", () => {
  const asked = /Date\.now|new Date\(\)|Math\.random|localeCompare|toLocale/;
  expect(files.filter((file) => asked.test(readFileSync(file, "utf8")))).toEqual([]);
});

it("each law is a file named by its code", () => {
  const laws = readdirSync("src/prove/laws").map((file) => basename(file, ".ts"));
  expect(laws.filter((law) => !(law in codes))).toEqual([]);
});

it("the top level is the design card's", () => {
  const card =
    "README.md DEVELOPERS.md package.json package-lock.json tsconfig.json src recipes templates schemas tests out LICENSE";
  const other = readdirSync(".").filter(
    (name) => !name.startsWith(".") && !["node_modules", "dist"].includes(name),
  );
  expect(other.filter((name) => !card.split(" ").includes(name))).toEqual([]);
});
