import type { CarFile } from "./generated/car.js";
import type { PlanText } from "./generated/plan.js";
import type { FoundFile } from "./generated/found.js";
import type { Filed, Library } from "./library.js";
import type { Brief, Step } from "./plan.js";
import type { Proof } from "./proof.js";
import type { Source } from "./source.js";
import type { Words } from "./words.js";

/** A library with the sources it was read from. */
export interface Opened {
  library: Library;
  sources: readonly Source[];
  words: Words;
}

/** What to plan: a job by name, a car file or options. */
export interface Ask {
  job: string;
  car?: CarFile;
  fitted: Readonly<Record<string, string>>;
  /** What was found and added during the work. */
  during?: Filed<FoundFile>;
}

/** A plan with its proof, as `plan --json` gives it. */
export interface PlanFile {
  job: string;
  range: string;
  car: {
    id: string;
    name: string;
    fitted: Record<string, string>;
    found: NonNullable<CarFile["found"]>;
    taken: string[];
  };
  steps: Step[];
  count: Proof["count"];
  proof: { laws: Proof["laws"] };
  walk: {
    zoneChanges: number;
    toolChanges: number;
    plain: { zoneChanges: number; toolChanges: number };
  };
  brief: Brief;
  digest: string;
  /** Where the plan goes on from a pack that was printed before. */
  resume?: Resume;
}

/** What a new pack takes over from the one that it replaces. */
export interface Resume {
  /** The revision on the sheets that are replaced. */
  replaces: string;
  /** The last step that is done. */
  reached: string;
  readings: { step: string; name: string; value: string }[];
  decisions: { hold: string; choice: string }[];
}

/** A plan that somebody wrote or edited, and the file it stands in. */
export interface Given {
  text: PlanText;
  file: string;
}

/** A job with the sets of options that matter to it, and the cars of its range. */
export interface JobOptions {
  job: string;
  sets: Record<string, string>[];
  /** How many more sets there are. */
  left: number;
  cars: CarFile[];
}
