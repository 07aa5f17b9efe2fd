import type { RangeFile } from "../../src/model/generated/range.js";
import type { RecipeFile } from "../../src/model/generated/recipe.js";
import type { Step } from "../../src/model/plan.js";
import { verbs } from "../../src/model/verbs.js";
import type { Change } from "../../src/model/world.js";
import { type Declared, declaredOf } from "./declared.js";
import { type Written, writtenOf } from "./written.js";

const moving = new Set(["lift-out", "put-in", "cut-out", "fit-new"]);
const settling = new Set(["fold-back", "lay-back", "ease", "settle", "tie-aside", "free"]);
const feeding = new Set(["isolate", "restore", "drain", "fill"]);
const parting = new Set(["unplug", "plug-in", "lift-out", "put-in"]);
const joining = new Set(["unplug", "plug-in", "unhook", "hook-on"]);
const sealing = new Set(["weld", "tack", "seal", "paint", "put-in"]);

/** Why one of two neighbouring steps must stay before the other, from range and recipes; nothing where either may. */
export type Pairs = (a: Step, b: Step) => string | undefined;

/** Judges pairs by the texts of a range and its recipes, never by the prover. */
export function pairsOf(
  range: RangeFile,
  recipes: readonly RecipeFile[],
  fitted: Record<string, string>,
): Pairs {
  const declared = declaredOf(range);
  const written = writtenOf(range, recipes, fitted);
  return (a, b) => {
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const)
      for (const change of one.does)
        for (const second of other.does) {
          const near = meets(change.place, second.place);
          const why =
            (near ? byRange(declared, change, second) : undefined) ??
            byRecipe(written, one, change, second);
          if (why !== undefined) return why;
        }
    return written.chained(a, b);
  };
}

/** Whether two places can be the same place of the car. */
export function meets(a: string, b: string): boolean {
  return a === "" || b === "" || a === b;
}

type Rule = (declared: Declared, one: Change, other: Change) => boolean;

const rules: Record<string, Rule> = {
  "same object": (_, one, other) => one.object === other.object,
  "holder and host": ({ host, easing }, one, { object }) => {
    const eases = settling.has(one.verb) && easing.has(object);
    return host.get(object) === one.object && (moving.has(one.verb) || eases);
  },
  "weld and panel": ({ weldedBy }, one, { object }) =>
    moving.has(one.verb) && weldedBy.get(one.object)?.has(object) === true,
  "cover and covered": ({ hides, host }, one, { object }) => {
    const under = hides.get(one.object);
    const hidden = under?.has(object) === true || under?.has(host.get(object) ?? "") === true;
    return hidden && (moving.has(one.verb) || settling.has(one.verb));
  },
  "supply and its user": ({ supply }, one, other) =>
    feeding.has(one.verb) &&
    supply.get(other.object) === one.object &&
    (joining.has(other.verb) || other.verb === "try"),
  "plug and its test": ({ proves }, one, { object }) =>
    one.verb === "try" && proves.get(one.object)?.has(object) === true,
};

function byRange(declared: Declared, one: Change, other: Change): string | undefined {
  return Object.keys(rules).find((why) => rules[why]?.(declared, one, other));
}

function byRecipe(written: Written, step: Step, change: Change, other: Change): string | undefined {
  const works = ["strip", "record", "repair", "refit"].includes(step.phase);
  const sealed = ["try-in", "take-out"].includes(change.verb) && sealing.has(other.verb);
  if (sealed) return "trial fit and seal";
  if (works && written.isOffFor(step, other)) return "need off";
  if (works && deadFor(written, step, change, other)) return "supply and its user";
  const asked = written.needsOf(step).some((need) => asksFor(need, step.position, other));
  return asked ? "written need" : undefined;
}

/** Where some steps of a recipe need a supply live, only its plugs and its part need it isolated; checks never do. */
function deadFor({ recipeOf }: Written, step: Step, change: Change, other: Change): boolean {
  const recipe = recipeOf(step);
  const live = (recipe?.strip ?? []).some((raw) => (raw.needs ?? []).join().includes(" live"));
  const isolated = (recipe?.["needs-isolated"] ?? []).includes(other.object);
  const dead = step.origin.path[0] !== "check" && (!live || parting.has(change.verb));
  return dead && isolated && feeding.has(other.verb);
}

/** Whether a change bears on a need as a recipe writes it: 'seat forward', 'floor wiped 2'. */
function asksFor(need: string, position: string, { object, place, verb, round }: Change): boolean {
  const [name = "", state = "", nth] = need.split(" ");
  if (name.split("@")[0] !== object || !meets(position, place)) return false;
  const byWork = Object.values(verbs).some((row) => row.gives === state);
  const wanted = nth === undefined ? undefined : Number(nth);
  return !byWork || (verbs[verb]?.gives === state && round === wanted);
}
