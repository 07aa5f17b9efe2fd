import type { Library } from "../../../model/library.js";
import type { Path, Source } from "../../../model/source.js";
import type { WrittenMessage } from "../../../model/wear.js";
import { type Placed, stepsOf } from "../../../model/recipe-steps.js";
import { type PlacedText, textsOf } from "../../texts.js";
import { describedInCatalog, describedInRange, describedInRecipe } from "./described.js";
import { sentencesOf } from "./sentences.js";

/** What a text is for: it commands, states what is so, remarks, describes, says how to avoid a hazard, or names one. */
export type Use = "do" | "state" | "note" | "describe" | "avoid" | "hazard";

/** A text that the sheet prints, sentence by sentence, and where it stands. */
export interface Told {
  use: Use;
  sentences: readonly string[];
  source: Source;
  path: Path;
}

const uses: Readonly<Record<string, Use>> = {
  say: "do",
  back: "do",
  accept: "state",
  checks: "state",
  note: "note",
  hazard: "hazard",
  avoid: "avoid",
  short: "avoid",
  consequence: "hazard",
};

/** Every text of a library's steps and safety messages, and those that describe its jobs, parts and tools. */
export function toldIn({ recipes, ranges, catalogs }: Library): Told[] {
  return [
    ...recipes.flatMap(({ data, source }) => [
      ...stepsOf(data).flatMap((placed) =>
        [...textsOf(placed), ...warningsOf(placed)].map((text) => told(source, text)),
      ),
      ...describedInRecipe(data).map((text) => described(source, text)),
    ]),
    ...ranges.flatMap(({ data, source }) =>
      describedInRange(data).map((text) => described(source, text)),
    ),
    ...catalogs.flatMap(({ data, source }) => [
      ...Object.entries(data.messages ?? {}).flatMap(([name, message]) =>
        textsOfMessage(message, ["messages", name]).map((text) => told(source, text)),
      ),
      ...describedInCatalog(data).map((text) => described(source, text)),
    ]),
  ];
}

function described(source: Source, { text, path }: PlacedText): Told {
  return { use: "describe", sentences: sentencesOf(text), source, path };
}

function warningsOf({ step, path }: Placed): PlacedText[] {
  return (step.warn ?? []).flatMap((message, i) =>
    typeof message === "string" ? [] : textsOfMessage(message, [...path, "warn", i]),
  );
}

function textsOfMessage(
  { hazard, avoid, short = "", consequence }: WrittenMessage,
  path: Path,
): PlacedText[] {
  return Object.entries({ hazard, avoid, short, consequence }).map(([key, text]) => ({
    text,
    path: [...path, key],
  }));
}

function told(source: Source, { text, path }: PlacedText): Told {
  const key = path.findLast((part) => typeof part === "string") ?? "";
  return { use: uses[key] ?? "state", sentences: sentencesOf(text), source, path };
}
