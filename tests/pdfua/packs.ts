import { type PrintOptions, type Printed, print } from "../../src/index.js";
import { jobsOf, opened, own, planned, small } from "../plans.js";

/** A pack to print: a job, and how. */
export interface Pack {
  name: string;
  library: string;
  job: string;
  options: Partial<PrintOptions>;
}

const repairs = ["floor-pan-section", "seat-crossmember"];
const ways: Record<string, Partial<PrintOptions>> = {
  a4: {},
  letter: { paper: "letter" },
  large: { large: true },
};

/** The library's two repairs, the longest jobs that there are, on every paper. */
export const repairPacks: readonly Pack[] = repairs.flatMap((job) =>
  Object.entries(ways).map(([way, options]) => ({
    name: `${job}, ${way}`,
    library: own,
    job,
    options,
  })),
);

/** The small library's job as it is, as a draft, and to be filled in on a screen. */
export const smallPacks: readonly Pack[] = [
  { name: "floor-paint, a4", library: small, job: "floor-paint", options: {} },
  { name: "floor-paint, draft", library: small, job: "floor-paint", options: { draft: true } },
  {
    name: "floor-paint, fillable",
    library: small,
    job: "floor-paint",
    options: { fillable: true },
  },
];

/** The plan of a pack: on the first car that is known to the library, where there is one. */
export function planOf({ library, job }: Pack): ReturnType<typeof planned> {
  const all = jobsOf(opened(library)).filter(({ ask }) => ask.job.split("/").at(-1) === job);
  const one = all.find(({ ask }) => ask.car) ?? all[0];
  if (!one) throw new Error(`no job ${job}`);
  return planned(one.ask, library);
}

const printed = new Map<Pack, Promise<Printed[]>>();

/** Prints every sheet of a pack once; the last one is the pack in which all are joined. */
export function printPack(pack: Pack): Promise<Printed[]> {
  const known = printed.get(pack) ?? printNow(pack);
  printed.set(pack, known);
  return known;
}

async function printNow(pack: Pack): Promise<Printed[]> {
  const { opened: from, value } = planOf(pack);
  if (!value) throw new Error("no plan");
  const all = { paper: "a4" as const, large: false, draft: false, html: false, ...pack.options };
  const { value: sheets, diagnostics } = await print(from, value, all);
  if (!sheets) throw new Error(diagnostics.map((one) => one.message).join("\n"));
  return sheets;
}
