// Writes the words of all templates and figures into templates/words.en.yaml; run it after one of them changed.
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { parseDocument } from "yaml";
import { figures } from "../../dist/figures/figures.js";
import { textsOf } from "../../dist/fill/texts.js";

const file = "templates/words.en.yaml";
const templates = readdirSync("templates", { recursive: true })
  .filter((name) => name.endsWith(".hbs"))
  .sort();
const all = templates.flatMap((name) => textsOf(readFileSync(`templates/${name}`, "utf8")));
const words = parseDocument(readFileSync(file, "utf8"));
const choices = ({ takes }) => (takes.includes(" | ") ? takes.split(" | ") : []);
const told = figures.flatMap(({ about, formula, source, inputs }) => [
  about,
  formula,
  source,
  ...Object.entries(inputs).flatMap(([name, input]) => [name, ...choices(input)]),
]);
const asKeys = (texts) => Object.fromEntries([...new Set(texts)].map((text) => [text, text]));
words.set("texts", asKeys(all));
words.set("figures", asKeys(told.filter((text) => /\p{L}{2}/u.test(text))));
writeFileSync(file, words.toString({ lineWidth: 0 }));
