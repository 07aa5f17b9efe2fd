import type { JobOptions } from "../model/plan-file.js";
import type { Library } from "../model/library.js";
import { combinationsOf } from "./combinations.js";
import { recipesFor } from "./find-job.js";
import { fits } from "./fitted.js";
import { optionsThatMatter } from "./matters.js";

const mostSets = 20_000;

/** Every job of a library that a car can have, with the sets of options that matter to it. */
export function jobsOf(library: Library): JobOptions[] {
  return library.ranges.flatMap((range) => {
    const recipes = recipesFor(library, range).map((one) => one.data);
    const cars = library.cars
      .map((one) => one.data)
      .filter((car) => car.range === range.data.range);
    const jobs = recipes.filter((one) => one["every-job"] !== true);
    return jobs.map((recipe): JobOptions => {
      const options = optionsThatMatter(range.data, recipes, recipe);
      const { sets, left } = combinationsOf(range.data, options, mostSets);
      const has = (fitted: Record<string, string>): boolean => fits(range.data, recipe, fitted);
      return {
        job: `${range.data.range}/${recipe.recipe}`,
        sets: sets.filter(has),
        left,
        cars: cars.filter((car) => has(car.fitted ?? {})),
      };
    });
  });
}
