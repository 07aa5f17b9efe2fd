import type { Diagnostic, Span } from "../../diagnostics/diagnostic.js";
import { type Library, rangesOf, shelfNames, shelves } from "../../model/library.js";
import { targetsOf, verbOf } from "../../model/recipe-step.js";
import { effectOf } from "../../model/verbs.js";
import { entries, fixingsOf, joinsOf } from "../inventory.js";
import type { Rule } from "../rule.js";
import { stepsOf } from "../../model/recipe-steps.js";

/** No name is used twice where it would then mean two things. */
export const twice: Rule = {
  whole: false,
  run: (library, report) => {
    const { ranges, cars } = library;
    const groups = [
      ranges.map((one) => named("range", one.data.range, one.source.spanOf(["range"]))),
      cars.map((one) => named("car", one.data.car, one.source.spanOf(["car"]))),
      ...scopes(library).map((recipes) => recipes.map(recipeNamed)),
      ...scopes(library).map((recipes) => recipes.flatMap(holdsNamed)),
      ...library.recipes.map(stepsNamed),
      ...shelfNames.map((shelf) => onShelf(library, shelf)),
      ...ranges.map(inventory),
    ];
    const found = groups.flatMap(repeats);
    const places = found.map(({ span }) => `${span?.file} ${span?.start}`);
    found.filter((_, i) => places.indexOf(places[i] ?? "") === i).forEach(report);
  },
};

interface Named {
  what: string;
  name: string;
  span: Span;
}

function named(what: string, name: string, span: Span): Named {
  return { what, name, span };
}

type Recipe = Library["recipes"][number];

/** The recipes that one job can meet; a recipe for every range stands in each group. */
function scopes(library: Library): Recipe[][] {
  const { ranges, recipes } = library;
  if (ranges.length === 0) return [recipes];
  return ranges.map((range) => recipes.filter((one) => rangesOf(library, one).includes(range)));
}

function recipeNamed({ data, source }: Recipe): Named {
  return named("recipe", data.recipe, source.spanOf(["recipe"]));
}

/** Holds are known by name in a whole job, so two recipes that a job can meet may not share one. */
function holdsNamed({ data, source }: Recipe): Named[] {
  return stepsOf(data).flatMap(({ step, path }) => {
    const verb = verbOf(step) ?? "";
    if (effectOf(verb) !== "release") return [];
    return targetsOf(step).map((name) => named("hold", name, source.spanOf([...path, verb])));
  });
}

/** The steps of a section are told apart by their own id, or by what they do, to what and in which round. */
function stepsNamed({ data, source }: Recipe): Named[] {
  return stepsOf(data).map(({ step, path }) => {
    const verb = verbOf(step) ?? "";
    const does = [verb, ...targetsOf(step), step.at, step.to, step.round];
    const name = step.id ?? does.filter((one) => one !== undefined).join(" ");
    const at = source.spanOf([...path, step.id === undefined ? verb : "id"]);
    return named("step", `${path[0]}: ${name}`, at);
  });
}

function onShelf({ catalogs }: Library, shelf: keyof typeof shelves): Named[] {
  return catalogs.flatMap(({ data, source }) =>
    Object.keys(data[shelf] ?? {}).map((name) =>
      named(shelves[shelf], name, source.keySpanOf([shelf, name])),
    ),
  );
}

function inventory({ data, source }: Library["ranges"][number]): Named[] {
  const maps = (["supplies", "parts", "surfaces", "joints", "functions"] as const).flatMap((key) =>
    entries<unknown>(data[key], [key]),
  );
  const all = [...maps, ...fixingsOf(data), ...joinsOf(data)];
  return all.map(({ name, path }) => named("object", name, source.keySpanOf(path)));
}

function repeats(all: readonly Named[]): Diagnostic[] {
  const first = new Map<string, Named>();
  return all.flatMap((one) => {
    const before = first.get(one.name);
    if (before === undefined) first.set(one.name, one);
    return before === undefined ? [] : [repeat(one, before)];
  });
}

function repeat({ what, name, span }: Named, before: Named): Diagnostic {
  return {
    code: "duplicate-id",
    message: `The ${what} '${name}' is there already.`,
    span,
    hints: [`Give one of the two another ${what === "step" ? "id" : "name"}.`],
    related: [{ span: before.span, label: "the first one" }],
  };
}
