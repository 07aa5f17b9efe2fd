import type { Diagnostic } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { RecipeFile } from "../model/generated/recipe.js";
import type { Filed } from "../model/library.js";
import type { Path, Source } from "../model/source.js";
import type { Thing } from "../model/world.js";
import type { CarState } from "./car-state.js";
import { referTo } from "./things.js";
import { matches } from "./when.js";

/** A recipe at one position: what resolve orders and arrange moves about. */
export interface Visit {
  id: string;
  recipe: Filed<RecipeFile>;
  position: string;
  /** The visits that must be off before this one is touched. */
  after: { id: string; path: Path; supply?: string }[];
  needsIsolated: string[];
}

/** What a closure is worked out from. */
export interface Scope {
  recipes: readonly Filed<RecipeFile>[];
  things: ReadonlyMap<string, Thing>;
  /** Every name of the range, fitted to this car or not. */
  names: ReadonlySet<string>;
  car: CarState;
}

type Wanted = { part?: string; at?: string; when?: Record<string, string | string[]> } | string;

/** Follows needs from the job's recipe to every recipe it brings in; reports cycles, gaps and unknown names. */
export function closure(
  scope: Scope,
  roots: readonly Filed<RecipeFile>[],
): { visits: Visit[]; diagnostics: Diagnostic[] } {
  const walk = new Walk(scope);
  for (const root of roots) walk.root(root);
  return { visits: [...walk.done.values()], diagnostics: walk.diagnostics };
}

class Walk {
  readonly done = new Map<string, Visit>();
  readonly diagnostics: Diagnostic[] = [];
  private readonly stack: string[] = [];
  private readonly scope: Scope;

  constructor(scope: Scope) {
    this.scope = scope;
  }

  root(recipe: Filed<RecipeFile>): void {
    const part = recipe.data.strips ?? recipe.data.eases;
    const keys = part === undefined ? [] : referTo(this.scope.things, part, "", this.scope.car);
    if (part !== undefined && keys.length === 0)
      this.unknown(part, recipe.source, [recipe.data.strips ? "strips" : "eases"]);
    const positions =
      part === undefined ? [""] : keys.map((key) => this.scope.things.get(key)?.position ?? "");
    for (const position of positions) this.visit(recipe, position, recipe.source, []);
  }

  private visit(recipe: Filed<RecipeFile>, position: string, from: Source, path: Path): string {
    const id = position === "" ? recipe.data.recipe : `${recipe.data.recipe}@${position}`;
    if (this.stack.includes(id)) this.cycle(id, from, path);
    else if (!this.done.has(id)) this.enter(id, recipe, position);
    return id;
  }

  private enter(id: string, recipe: Filed<RecipeFile>, position: string): void {
    this.stack.push(id);
    const visit: Visit = {
      id,
      recipe,
      position,
      after: [],
      needsIsolated: recipe.data["needs-isolated"] ?? [],
    };
    this.follow(visit, "needs-off", "strips");
    this.follow(visit, "needs-eased", "eases");
    for (const [i, supply] of visit.needsIsolated.entries())
      this.isolate(visit, supply, ["needs-isolated", i]);
    this.stack.pop();
    this.done.set(id, visit);
  }

  private follow(visit: Visit, key: "needs-off" | "needs-eased", by: "strips" | "eases"): void {
    for (const [i, wanted] of (visit.recipe.data[key] ?? []).entries()) {
      const path = [key, i];
      for (const part of this.wantedParts(visit, wanted as Wanted, path)) {
        if (part.absent !== undefined && part.absent === "leave-off") continue;
        const recipe = this.recipeFor(part, by, visit.recipe.source, path);
        if (recipe)
          visit.after.push({
            id: this.visit(recipe, part.position, visit.recipe.source, path),
            path,
          });
      }
    }
  }

  private wantedParts(visit: Visit, wanted: Wanted, path: Path): Thing[] {
    const { things, car } = this.scope;
    const ask = typeof wanted === "string" ? { part: wanted } : wanted;
    if (ask.part === undefined || !matches(ask.when, car.fitted)) return [];
    const name = ask.part.split("@")[0] ?? "";
    if (!this.scope.names.has(name)) this.unknown(name, visit.recipe.source, path);
    const places = ask.at === undefined ? [visit.position] : car.positions(ask.at);
    const keys = places.flatMap((place) => referTo(things, ask.part ?? "", place, car));
    return [...new Set(keys)].flatMap((key) => things.get(key) ?? []);
  }

  private isolate(visit: Visit, supply: string, path: Path): void {
    if (!this.scope.names.has(supply)) return this.unknown(supply, visit.recipe.source, path);
    const isolates = (recipe: Filed<RecipeFile>): boolean =>
      (recipe.data.strip ?? []).some((step) =>
        [step.isolate ?? step.drain].flat().includes(supply),
      );
    const recipe = this.scope.recipes.find(
      (r) => matches(r.data.when, this.scope.car.fitted) && isolates(r),
    );
    if (!recipe)
      this.report("no-recipe", `No recipe isolates '${supply}'.`, visit.recipe.source, path, []);
    else visit.after.push({ id: this.visit(recipe, "", visit.recipe.source, path), path, supply });
  }

  private recipeFor(
    part: Thing,
    by: "strips" | "eases",
    from: Source,
    path: Path,
  ): Filed<RecipeFile> | undefined {
    const fit = (way: "strips" | "eases"): Filed<RecipeFile>[] =>
      this.scope.recipes.filter(
        (r) => r.data[way] === part.name && matches(r.data.when, this.scope.car.fitted),
      );
    const found = fit(by);
    const [first, second] = found.length > 0 ? found : fit("strips");
    if (!first)
      this.report(
        "no-recipe",
        `No recipe takes off the ${part.words} ('${part.name}') of this car.`,
        from,
        path,
        [`Write one: 'strips: ${part.name}'.`],
      );
    if (first && second)
      this.report(
        "two-recipes",
        `Two recipes take off '${part.name}' on this car: ${first.data.recipe} and ${second.data.recipe}.`,
        from,
        path,
        ["Give each a 'when' that leaves out the other."],
      );
    return first;
  }

  private cycle(id: string, from: Source, path: Path): void {
    const round = [...this.stack.slice(this.stack.indexOf(id)), id];
    this.report("cycle", `The needs go round in a circle: ${round.join(" needs ")}.`, from, path, [
      "Take one of these needs out.",
    ]);
  }

  private unknown(name: string, from: Source, path: Path): void {
    this.report(
      "unknown-name",
      `Nothing in this range is called '${name}'.`,
      from,
      path,
      didYouMean(name, this.scope.names),
    );
  }

  private report(
    code: Diagnostic["code"],
    message: string,
    source: Source,
    path: Path,
    hints: string[],
  ): void {
    this.diagnostics.push({ code, message, span: source.spanOf(path), hints, related: [] });
  }
}
