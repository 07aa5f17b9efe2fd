import type { Law } from "./law.js";
import { access } from "./laws/access.js";
import { closing } from "./laws/closing.js";
import { count } from "./laws/count.js";
import { cover } from "./laws/cover.js";
import { holds } from "./laws/holds.js";
import { hotWork } from "./laws/hot-work.js";
import { joins } from "./laws/joins.js";
import { oneUse } from "./laws/one-use.js";
import { record } from "./laws/record.js";
import { returns } from "./laws/return.js";
import { support } from "./laws/support.js";
import { trialFit } from "./laws/trial-fit.js";
import { waiting } from "./laws/waiting.js";
import { welds } from "./laws/welds.js";
import { work } from "./laws/work.js";

/** Every law, in order. */
export const laws: readonly Law[] = [
  access,
  cover,
  returns,
  count,
  oneUse,
  joins,
  holds,
  record,
  hotWork,
  waiting,
  trialFit,
  welds,
  support,
  closing,
  work,
];
