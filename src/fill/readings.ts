import type { Figure } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { keyOf } from "../model/world.js";
import { figureHtml, marked, withoutBlanks } from "./marks.js";

/** A reading to write down: its name, its heading with the unit, and what it should be. */
export interface Reading {
  name: string;
  heading: string;
  /** Its unit; empty where it has none. */
  unit: string;
  /** The value and its source mark, a line to write on for the maker's, or nothing where the reading itself is the record. */
  shouldBeHtml: string;
}

/** The readings of one step. */
export interface ReadingsOfStep {
  step: Step;
  readings: Reading[];
}

/** Readings taken at two steps or more, to be held against each other. */
export interface Series {
  steps: Step[];
  readings: Reading[];
}

/** All readings of a plan in its order: those taken once, and those taken again of the same object. */
export function readingsOf(
  steps: readonly Step[],
  words: Words,
): { once: ReadingsOfStep[]; again: Series[] } {
  const taken = steps
    .map((step) => ({
      step,
      readings: (step.hold ?? step).readings.map((one) => readingOf(one, words)),
    }))
    .filter(({ readings }) => readings.length > 0);
  const groups = new Map<string, ReadingsOfStep[]>();
  for (const one of taken) {
    const key = seriesKey(one);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const all = [...groups.values()];
  return {
    once: taken.filter((one) => groups.get(seriesKey(one))?.length === 1),
    again: all.filter((group) => group.length > 1).map(seriesOf),
  };
}

/** Readings belong together where the same names are read of the same objects; a tally of the same name is one count. */
function seriesKey({ step, readings }: ReadingsOfStep): string {
  const objects = step.does.map(({ object, place }) =>
    keyOf(step.verb === "tally" ? step.verb : object, place),
  );
  return JSON.stringify([objects, readings.map(({ name }) => name)]);
}

function seriesOf(group: readonly ReadingsOfStep[]): Series {
  return { steps: group.map(({ step }) => step), readings: group[0]?.readings ?? [] };
}

/** What a hold allows, with the source of each limit; the maker's own is written on the checklist, not here. */
export function allowedHtml({ hold, figures }: Step): string {
  const limits = new Map(
    figures.map((figure) => [figure.text, { ...figure, text: withoutBlanks(figure.text) }]),
  );
  return marked(withoutBlanks(hold?.accept ?? ""), [...limits.values()]);
}

/** Whether what a hold asks for is limited by a figure. */
export function isLimited({ hold, figures }: Step): boolean {
  return figures.some(({ text }) => hold?.accept.includes(text));
}

/** Takes a unit in brackets off a reading's name: 'height (mm)'. */
function readingOf({ name, figure }: { name: string; figure?: Figure }, words: Words): Reading {
  const [, bare = name, written = ""] = /^(.*) \(([^()]+)\)$/.exec(name) ?? [];
  const given = figure?.unit ?? written;
  const unit = given === "1" ? "" : given;
  return {
    name: bare,
    unit,
    heading: unit === "" ? bare : `${bare} (${unit})`,
    shouldBeHtml: figure ? figureHtml(figure, words) : "",
  };
}
