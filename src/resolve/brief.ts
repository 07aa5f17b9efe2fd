import type { RangeFile } from "../model/generated/range.js";
import type { RecipeFile } from "../model/generated/recipe.js";
import type { Catalog, Filed } from "../model/library.js";
import type { Brief, Minutes, Step, TaskBrief } from "../model/plan.js";
import { messageOf } from "../model/wear.js";
import type { Words } from "../model/words.js";
import { type Thing, keysOf } from "../model/world.js";
import type { Visit } from "./closure.js";
import { sided } from "./sentence.js";
import { sourcesOf } from "./sources.js";
import type { Fitted } from "./when.js";

/** What the brief is gathered from. */
export interface BriefInput {
  range: RangeFile;
  recipe: RecipeFile;
  catalog: Catalog;
  fitted: Fitted;
  visits: readonly Visit[];
  steps: readonly Step[];
  things: ReadonlyMap<string, Thing>;
  words: Words;
}

/** Gathers what the job as a whole needs and says; the terms stand by the alphabet, every other list in the order of the recipes. */
export function briefOf(input: BriefInput): Brief {
  const { range, recipe, visits, catalog } = input;
  const recipes = [...new Set(visits.map((visit) => visit.recipe))];
  const all = <T>(pick: (data: RecipeFile) => readonly T[] | undefined): T[] =>
    distinct(recipes.flatMap((one) => [...(pick(one.data) ?? [])]));
  return {
    title: recipe.name,
    about: recipe.about ?? "",
    rangeName: range.name,
    rangeAbout: range.about,
    invented: range.invented,
    options: optionsOf(range, input.fitted),
    zones: range.zones,
    parts: Object.fromEntries(Object.entries(range.parts).map(([part, { name }]) => [part, name])),
    things: Object.fromEntries(
      [...input.things.values()].map((thing) => [thing.key, sided(input.words, thing)]),
    ),
    tasks: visits.map((visit) => taskBrief(visits, visit)),
    safety: all((data) => data.safety).flatMap((message) => messageOf(catalog, message)),
    permits: all((data) => data.permits),
    tools: toolsOf(input, recipes),
    consumables: consumablesOf(input),
    spares: [...all((data) => data.spares), ...missingParts(input)],
    renew: all((data) => data.renew),
    waste: all((data) => data.waste),
    terms: all((data) => data.terms).sort((a, b) => (a.term < b.term ? -1 : 1)),
    sources: sourcesOf(input.steps, input.words),
    ...(recipe.worth === undefined ? {} : { worth: recipe.worth }),
    ...(recipe.outline === undefined ? {} : { outline: recipe.outline }),
  };
}

/** Parts that were gone when the car came in and go back new. */
function missingParts({ steps, things, words }: BriefInput): Brief["spares"] {
  const fitted = new Set(steps.filter(({ verb }) => verb === "fit-new").flatMap(keysOf));
  return [...things.values()]
    .filter(({ key, absent }) => absent === "fit-new" && fitted.has(key))
    .map((thing) => ({
      name: sided(words, thing),
      count: 1,
      note: words.phrases["missing-here"] ?? "",
    }));
}

function distinct<T>(values: readonly T[]): T[] {
  const seen = new Map(values.map((value) => [JSON.stringify(value), value]));
  return [...seen.values()];
}

function optionsOf(range: RangeFile, fitted: Fitted): Brief["options"] {
  return Object.entries(range.options).map(([option, { name, values }]) => {
    const value = fitted[option] ?? "";
    return { option, name, value, words: values[value] ?? value };
  });
}

function taskBrief(visits: readonly Visit[], { id, recipe, position }: Visit): TaskBrief {
  const { recipe: name, name: title, time, people = 1, when = {} } = recipe.data;
  const minutes: Minutes | undefined = time ? [...time] : undefined;
  const because = visits.flatMap(({ id: task, recipe: asking, after }) =>
    after
      .filter((need) => need.id === id)
      .map(({ path }) => ({
        task,
        need: String(path[0]),
        origin: { file: asking.source.file, path },
      })),
  );
  const options = Object.entries(when).map(([option, value]) => [option, [value].flat()]);
  return {
    id,
    recipe: name,
    position,
    title,
    people,
    ...(minutes ? { minutes } : {}),
    when: Object.fromEntries(options),
    because,
  };
}

function toolsOf(
  { catalog, steps }: BriefInput,
  recipes: readonly Filed<RecipeFile>[],
): Brief["tools"] {
  const ids = [
    ...recipes.flatMap((one) => one.data.tools ?? []),
    ...steps.flatMap((step) => step.tools),
  ];
  return distinct(ids).flatMap((id) => {
    const known = catalog.tools[id];
    return known ? [{ id, ...known }] : [];
  });
}

/** Amounts of the same supply are added up; a use without an amount only names it. */
function consumablesOf({ catalog, steps }: BriefInput): Brief["consumables"] {
  const uses = steps.flatMap((step) => step.uses);
  const ids = distinct(uses.map((use) => use.consumable));
  return ids.map((id) => {
    const mine = uses.filter((use) => use.consumable === id);
    const amount = mine.reduce((sum, use) => sum + (use.amount ?? 0), 0);
    const note = distinct(mine.flatMap((use) => use.note ?? [])).join("; ");
    const source = mine.find((use) => use.source)?.source;
    return {
      id,
      ...(catalog.consumables[id] ?? { name: id }),
      ...(amount > 0 ? { amount } : {}),
      ...(note ? { note } : {}),
      ...(source ? { source } : {}),
    };
  });
}
