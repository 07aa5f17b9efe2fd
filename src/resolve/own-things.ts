import type { RecipeFile } from "../model/generated/recipe.js";
import type { Filed } from "../model/library.js";
import type { Thing } from "../model/world.js";
import { verbOf, targetsOf } from "../model/recipe-step.js";
import { blankThing } from "./things.js";

const sections = ["prepare", "strip", "check", "record", "work", "close"] as const;
const holdVerbs = ["hold", "witness", "decide"];

/** The objects that a recipe declares at one position: its things, and its holds, which are declared by use. */
export function ownThings(recipe: Filed<RecipeFile>, position: string): Thing[] {
  const { data, source } = recipe;
  const zone = data.repairs ?? "";
  const make = (is: Thing["is"], name: string, words: string, path: (string | number)[]): Thing =>
    blankThing({ is, name, words, position, zone, origin: { file: source.file, path } });
  const things = Object.entries(data.things ?? {}).map(([name, words]) =>
    make("thing", name, words, ["things", name]),
  );
  for (const section of sections) {
    for (const [i, step] of (data[section] ?? []).entries()) {
      const verb = verbOf(step) ?? "";
      const path = [section, i];
      const declared = holdVerbs.includes(verb)
        ? ("hold" as const)
        : verb === "pause"
          ? ("thing" as const)
          : undefined;
      if (declared === undefined) continue;
      for (const name of targetsOf(step)) {
        const thing = make(declared, name, name.replaceAll("-", " "), path);
        thing.looksAt = [...(step["looks-at"] ?? [])];
        if (step.role !== undefined) thing.role = step.role;
        things.push(thing);
      }
    }
  }
  return things;
}
