import type { Law } from "./law.js";
import { access } from "./laws/access.js";
import { closing } from "./laws/closing.js";
import { count } from "./laws/count.js";
import { cover } from "./laws/cover.js";
import { holds } from "./laws/holds.js";
import { joins } from "./laws/joins.js";
import { oneUse } from "./laws/one-use.js";
import { returns } from "./laws/return.js";
import { trialFit } from "./laws/trial-fit.js";
import { work } from "./laws/work.js";

/** The laws that are built, in order. */
export const laws: readonly Law[] = [
  access,
  cover,
  returns,
  count,
  oneUse,
  joins,
  holds,
  trialFit,
  closing,
  work,
];

/** The laws that are not built yet; they are reported as not checked, never as held. */
export const unbuilt = [
  { law: 8, name: "Record before destroy" },
  { law: 9, name: "Hot work" },
  { law: 10, name: "Waiting" },
  { law: 12, name: "Welds" },
  { law: 13, name: "Support" },
] as const;
