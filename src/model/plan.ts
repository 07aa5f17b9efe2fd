import type { Figure, FigureSource } from "./figure.js";
import type { Tool } from "./library.js";
import type { Origin } from "./source.js";
import type { Wear } from "./wear.js";
import type { Change } from "./world.js";

/** The phases of a job, in order. */
export const phases = ["prepare", "strip", "record", "repair", "refit", "close"] as const;

/** A phase of a job. */
export type Phase = (typeof phases)[number];

/** Low, likely and high, in minutes. */
export type Minutes = [number, number, number];

/** A safety message: signal word, hazard, how to avoid it, consequence. */
export interface Message {
  word: "danger" | "warning" | "caution" | "notice";
  hazard: string;
  avoid: string;
  consequence: string;
  /** What to do, in short, where the message stands whole before in the same block. */
  short?: string;
  where?: string;
  /** What to wear against it. */
  wear?: readonly Wear[];
  /** The signs of ISO 7010 that fit it. */
  signs?: readonly string[];
}

/** What somebody must release, attend or decide. */
export interface Hold {
  kind: "hold" | "witness" | "decision";
  name: string;
  role: string;
  accept: string;
  readings: { name: string; figure?: Figure }[];
  choices: string[];
}

/** Fixings that one step takes out or puts back at one place. */
export interface StepFixing {
  kind: string;
  place: string;
  count: number;
  oneUse: boolean;
  /** How many of the count are new. */
  fresh: number;
  /** The range's full number at this place. */
  full: number;
  name: string;
  plural: string;
  size: string;
  where: string;
  torque?: Figure;
}

/** A supply that a step uses; an amount that was worked out says how. */
export interface Use {
  consumable: string;
  amount?: number;
  note?: string;
  source?: FigureSource;
}

/** One instruction, one box to tick. */
export interface Step {
  n: string;
  id: string;
  phase: Phase;
  /** The recipe's name. */
  task: string;
  /** The recipe's title in words. */
  title: string;
  position: string;
  verb: string;
  part?: string;
  /** What the part that goes on or comes off hides, as the range lists it. */
  hides: string[];
  /** The objects that it acts on, and what they hold. */
  touches: string[];
  fixings: StepFixing[];
  says: string;
  does: Change[];
  tools: string[];
  uses: Use[];
  hold?: Hold;
  messages: Message[];
  note?: string;
  /** The figures in its sentences: what they are of, as they are written, as an inch shop reads them, and their source. */
  figures: { kind: string; text: string; inch: string; mark: string; source: FigureSource }[];
  facts: { field: string; value?: string; figure?: Figure }[];
  readings: { name: string; figure?: Figure }[];
  checks: string[];
  /** The steps, by their id, that are done again before work on a new day. */
  again: string[];
  night: boolean;
  /** What is counted, and how the sheets lie where each position has as many. */
  count?: { expect: number; of: string; positions: string[] };
  found: string[];
  critical?: string;
  people: number;
  minutes: Minutes;
  /** How long to wait after the step, in words; empty where there is no wait. */
  wait: string;
  /** The wait from its least to its most, where the plan knows its time. */
  waitMinutes?: [number, number];
  waitSource?: FigureSource;
  zone: string;
  origin: Origin;
}

/** What a job needs and says as a whole, gathered from the range and from every recipe in it. */
export interface Brief {
  title: string;
  about: string;
  rangeName: string;
  rangeAbout: string;
  invented: boolean;
  options: { option: string; name: string; value: string; words: string }[];
  zones: Record<string, string>;
  /** The names of the parts of the car. */
  parts: Record<string, string>;
  /** The words of every object of the job, with its side, by its key. */
  things: Record<string, string>;
  tasks: TaskBrief[];
  safety: Message[];
  permits: { who: string; what: string }[];
  tools: ({ id: string } & Tool)[];
  consumables: {
    id: string;
    name: string;
    amount?: number;
    unit?: string;
    note?: string;
    /** Where the amount comes from, where it was worked out. */
    source?: FigureSource;
  }[];
  spares: { name: string; count: number; note?: string }[];
  renew: { name: string; why: string }[];
  waste: string[];
  /** Words of the job that not everybody knows. */
  terms: { term: string; means: string }[];
  /** Where the figures of the job come from, by the mark that stands beside them. */
  sources: { mark: string; words: string }[];
  /** The sides of the new panel seen from above, in words. */
  outline?: { front: string; rear: string; left: string; right: string; middle?: string };
  worth?: { hours?: Minutes; skill?: string; risk?: string };
}

/** What the heading of a task's block says. */
export interface TaskBrief {
  id: string;
  recipe: string;
  position: string;
  title: string;
  minutes?: Minutes;
  people: number;
  /** The options for which its recipe is written. */
  when: Record<string, string[]>;
  /** The tasks that ask for this one, and where; a task that nobody asks for is the job, or part of every job. */
  because: { task: string; need: string; origin: Origin }[];
}
