import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { small } from "../plans.js";

/** A diagnostic that a case must bring: its code, its place 'file:line:column', words and hints of it. */
export interface Expected {
  code: string;
  place: string;
  words: string;
  hints: string[];
}

/** A bad input: files laid over the small library, what to plan there, and what must be said of it. */
export interface Case {
  name: string;
  files: { path: string; text: string }[];
  without: string[];
  job?: string;
  fitted: Record<string, string>;
  expected: Expected[];
}

const root = "tests/cases";

/** Every case of this folder: a file is laid into the strip folder, a folder over the whole library. */
export function cases(): Case[] {
  return readdirSync(root)
    .filter((name) => statSync(join(root, name)).isDirectory() || name.endsWith(".yaml"))
    .sort()
    .map(readCase);
}

function readCase(entry: string): Case {
  const path = join(root, entry);
  const isFolder = statSync(path).isDirectory();
  const inside = isFolder
    ? readdirSync(path, { recursive: true, encoding: "utf8" }).filter((one) =>
        one.endsWith(".yaml"),
      )
    : [""];
  const files = inside.map((one) => {
    const text = readFileSync(join(path, one), "utf8");
    return { path: isFolder ? one : (line(text, "into") ?? `tiny/strip/${entry}`), text };
  });
  const all = files.map((file) => file.text).join("\n");
  const job = line(all, "job");
  const fitted = (line(all, "fitted") ?? "").split(" ").filter((pair) => pair !== "");
  return {
    name: entry.replace(".yaml", ""),
    files,
    without: (line(all, "without") ?? "").split(" ").filter((one) => one !== ""),
    ...(job === undefined ? {} : { job }),
    fitted: Object.fromEntries(fitted.map((pair) => pair.split("="))),
    expected: files.flatMap(({ path: file, text }) => expectations(file, text)),
  };
}

function line(text: string, key: string): string | undefined {
  return new RegExp(`^# ${key}: (.*)$`, "m").exec(text)?.[1];
}

function expectations(file: string, text: string): Expected[] {
  const found: Expected[] = [];
  for (const [, key, code = "", rest = ""] of text.matchAll(/^# (expect|hint): (\S+) ?(.*)$/gm)) {
    if (key === "hint") found.at(-1)?.hints.push(`${code} ${rest}`.trim());
    else {
      const [place = "", ...words] = rest.split(" ");
      const full = /^\d/.test(place) ? `${file}:${place}` : place;
      found.push({ code, place: full, words: words.join(" "), hints: [] });
    }
  }
  return found;
}

/** Lays files over a copy of the small library, hands its folder on and takes it away again. */
export function laidOut<T>(
  { files, without }: Pick<Case, "files" | "without">,
  use: (folder: string) => T,
): T {
  const folder = mkdtempSync(join(tmpdir(), "countback-"));
  try {
    cpSync(small, folder, { recursive: true });
    for (const path of without) rmSync(join(folder, path), { recursive: true });
    for (const { path, text } of files) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return use(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
