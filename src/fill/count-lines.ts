import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import type { Words } from "../model/words.js";
import { figureHtml, unbroken } from "./marks.js";

/** What the count column says of one fixing at one place, as the template reads it. */
export interface CountLine {
  name: string;
  size: string;
  count: number;
  bag: string;
  out: boolean;
  /** Fewer were found than the range has. */
  short: boolean;
  full: number;
  lacking: number;
  oneUse: boolean;
  fresh: number;
  allNew: boolean;
  torque: string;
}

/** The count column of a step that takes fixings out or puts them back. */
export function countLines(step: Step, bag: number | undefined, words: Words): CountLine[] {
  const effect = effectOf(step.verb);
  const out = effect === "out";
  if (effect === "leave-out") return [];
  return step.fixings.map((fixing) => ({
    name: fixing.count === 1 ? fixing.name : fixing.plural,
    size: unbroken(fixing.size),
    count: fixing.count,
    bag: bag === undefined || fixing.oneUse ? "" : String(bag),
    out,
    short: out && fixing.count < fixing.full,
    full: fixing.full,
    lacking: fixing.full - fixing.count,
    oneUse: fixing.oneUse,
    fresh: fixing.fresh,
    allNew: !out && fixing.fresh === fixing.count,
    torque: out || !fixing.torque ? "" : figureHtml(fixing.torque, words),
  }));
}

/** How many joins a step parts or joins. */
export function joinsOf(step: Step): number {
  return step.does.filter(({ verb }) => ["part-join", "make-join"].includes(effectOf(verb) ?? ""))
    .length;
}
