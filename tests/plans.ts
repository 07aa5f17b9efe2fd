import { hasErrors } from "../src/diagnostics/print.js";
import { parse } from "../src/read/parse.js";
import { type Ask, type Opened, type PlanFile, open, plan, planFrom } from "../src/index.js";
import { recipesFor } from "../src/find/find-job.js";

/** The small invented library of the tests. */
export const small = "tests/fixtures/small";

/** Plans a job of a library and returns plan and diagnostics. */
export function planned(ask: Partial<Ask> & { job: string }, library = small) {
  const from = opened(library);
  return { opened: from, ...plan(from, { fitted: {}, ...ask }) };
}

/** What the prover says of a plan file in which these steps stand instead. */
export function judged(opened: Opened, file: PlanFile | undefined, steps: PlanFile["steps"]) {
  const { value, diagnostics } = parse("plan.json", JSON.stringify({ ...file, steps }));
  return value ? planFrom(opened, value) : { diagnostics };
}

/** The plan of a job that must prove. */
export function proven(ask: Partial<Ask> & { job: string }, library = small): PlanFile {
  const { value, diagnostics } = planned(ask, library);
  if (!value || diagnostics.length > 0)
    throw new Error(diagnostics.map((d) => d.message).join("\n"));
  return value;
}

/** The library that comes with the package. */
export const own = "recipes";

/** A job of a library on one car, under a name for the reader of a report. */
export interface Job {
  name: string;
  ask: Ask;
}

/** Every job of a library: each recipe on the range's own options, fitted so far as it needs, and on each car file. */
export function jobsOf({ library }: Opened): Job[] {
  return library.ranges.flatMap((range) => {
    const defaults = Object.fromEntries(
      Object.entries(range.data.options).map(([option, one]) => [option, one.default]),
    );
    const cars = library.cars.filter((car) => car.data.range === range.data.range);
    return recipesFor(library, range).flatMap(({ data }) => {
      const wanted = Object.entries(data.when ?? {});
      const fitted = Object.fromEntries(
        wanted.map(([option, to]) => [option, [to].flat()[0] ?? ""]),
      );
      const job = `${range.data.range}/${data.recipe}`;
      const onCars = cars.filter((car) =>
        wanted.every(([option, to]) =>
          [to].flat().includes(car.data.fitted?.[option] ?? defaults[option] ?? ""),
        ),
      );
      return [
        { name: data.recipe, ask: { job, fitted } },
        ...onCars.map(({ data: car }) => ({
          name: `${data.recipe} on ${car.car}`,
          ask: { job, car, fitted: {} },
        })),
      ];
    });
  });
}

const known = new Map<string, Opened>();

/** A library that must open without an error; the two that no test writes to are read once. */
export function opened(folder: string): Opened {
  const before = known.get(folder);
  if (before) return before;
  const now = openedNow(folder);
  if (folder === own || folder === small) known.set(folder, now);
  return now;
}

function openedNow(folder: string): Opened {
  const { value, diagnostics } = open(folder);
  if (!value || hasErrors(diagnostics))
    throw new Error(diagnostics.map((d) => `${d.span?.file}: ${d.message}`).join("\n"));
  return value;
}
