// Writes the words of all templates into templates/words.en.yaml, under `texts`; run it after a template changed.
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { parseDocument } from "yaml";
import { textsOf } from "../../dist/fill/texts.js";

const file = "templates/words.en.yaml";
const templates = readdirSync("templates", { recursive: true })
  .filter((name) => name.endsWith(".hbs"))
  .sort();
const all = templates.flatMap((name) => textsOf(readFileSync(`templates/${name}`, "utf8")));
const words = parseDocument(readFileSync(file, "utf8"));
words.set("texts", Object.fromEntries([...new Set(all)].map((text) => [text, text])));
writeFileSync(file, words.toString({ lineWidth: 0 }));
