import type { RecipeFile } from "../model/generated/recipe.js";
import type { Catalog, Filed } from "../model/library.js";
import type { Thing } from "../model/world.js";
import { verbOf, targetsOf } from "../model/recipe-step.js";
import { blankThing } from "./things.js";

const sections = ["prepare", "strip", "check", "record", "work", "close"] as const;
const holdVerbs = ["hold", "witness", "decide"];

/** The objects that a recipe declares at one position: its things, and its holds, which are declared by use. */
export function ownThings(
  recipe: Filed<RecipeFile>,
  position: string,
  roles: Catalog["roles"],
): Thing[] {
  const { data, source } = recipe;
  const zone = data.repairs ?? "";
  const make = (is: Thing["is"], name: string, words: string, path: (string | number)[]): Thing =>
    blankThing({ is, name, words, position, zone, origin: { file: source.file, path } });
  const things = Object.entries(data.things ?? {}).map(([name, words]) =>
    make("thing", name, words, ["things", name]),
  );
  for (const section of sections) {
    for (const [i, step] of (data[section] ?? []).entries()) {
      const declared = declaredBy(verbOf(step) ?? "");
      if (declared === undefined) continue;
      for (const name of targetsOf(step)) {
        const thing = make(declared, name, name.replaceAll("-", " "), [section, i]);
        thing.looksAt = [...(step["looks-at"] ?? ownPart(data, section))];
        if (step.role !== undefined) thing.role = step.role;
        thing.independent = roles[step.role ?? ""]?.independent ?? false;
        things.push(thing);
      }
    }
  }
  return things;
}

/** What a step declares by naming it: a hold, or a pause. */
function declaredBy(verb: string): Thing["is"] | undefined {
  if (holdVerbs.includes(verb)) return "hold";
  return verb === "pause" ? "thing" : undefined;
}

/** A hold of a part's own check looks at the part, unless it says at what else. */
function ownPart({ strips, eases }: RecipeFile, section: string): string[] {
  return section === "check" ? [strips ?? eases ?? []].flat() : [];
}
