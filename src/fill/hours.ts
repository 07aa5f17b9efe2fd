import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { sum } from "./sheet.js";
import { waitHtml } from "./step-view.js";

/** Hours hands on, each at least 1. */
export interface Hours {
  low: number;
  likely: number;
  high: number;
}

/** The hours of a plan, from the steps' own minutes. */
export function hoursOf(steps: readonly Step[]): Hours {
  return hoursBy(steps, () => 1);
}

/** The same with each person of a step counted, as they are paid. */
export function paidHoursOf(steps: readonly Step[]): Hours {
  return hoursBy(steps, ({ people }) => people);
}

function hoursBy(steps: readonly Step[], times: (step: Step) => number): Hours {
  const hours = (i: 0 | 1 | 2): number =>
    Math.max(1, Math.round(sum(steps.map((step) => step.minutes[i] * times(step))) / 60));
  return { low: hours(0), likely: hours(1), high: hours(2) };
}

/** A block of work: its minutes hands on, its waits with their minutes where they are known, its night stops. */
export interface Block {
  phase: string;
  low: number;
  likely: number;
  high: number;
  waits: { minutes?: [number, number] }[];
  nights: readonly unknown[];
}

/** Some blocks added up, in hours and minutes: work, and apart from it the waits and the night stops. */
export interface Added {
  title: string;
  low: string;
  likely: string;
  high: string;
  /** The sum of the waits whose time is known; empty where there is none. */
  known: string;
  /** How many waits have no printed time. */
  unknown: number;
  nights: number;
  /** The likely work and the waits with a known time, as if each waited for the one before. */
  inRow: string;
  /** Days of eight hours for the likely work, and days of 24 hours for those waits, each rounded up. */
  days: { work: number; wait: number };
}

/** The blocks of each part of a job added up, in the order of the blocks. */
export function partsOf(blocks: readonly Block[], words: Words): Added[] {
  const parts = [...new Set(blocks.map(({ phase }) => phase))];
  return parts.map((part) =>
    addedUp(
      part,
      blocks.filter(({ phase }) => phase === part),
      words,
    ),
  );
}

/** Blocks added up as they are printed, each kind of time by itself. */
export function addedUp(title: string, blocks: readonly Block[], { phrases }: Words): Added {
  const work = (key: "low" | "likely" | "high"): number => sum(blocks.map((one) => one[key]));
  const waits = blocks.flatMap((one) => one.waits);
  const spans = waits.flatMap(({ minutes }) => (minutes ? [minutes] : []));
  const waited = (i: 0 | 1): number => sum(spans.map((span) => span[i]));
  const range = (least: number, most: number): string =>
    [...new Set([clock(least), clock(most)])].join(` ${phrases["to"] ?? ""} `);
  const likely = work("likely");
  return {
    title,
    low: clock(work("low")),
    likely: clock(likely),
    high: clock(work("high")),
    known: spans.length > 0 ? range(waited(0), waited(1)) : "",
    unknown: waits.length - spans.length,
    nights: sum(blocks.map(({ nights }) => nights.length)),
    inRow: range(likely + waited(0), likely + waited(1)),
    days: { work: Math.ceil(likely / day.work), wait: Math.ceil(waited(0) / day.wait) },
  };
}

/** Minutes of work and of waiting to a day. */
const day = { work: 8 * 60, wait: 24 * 60 };

/** Minutes as hours and minutes: '7:48'. */
function clock(minutes: number): string {
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

/** The waits whose time is known, alike ones together: what is added up, and after which steps. */
export function knownWaits(steps: readonly Step[]): { timeHtml: string; after: string }[] {
  const alike = new Map<string, string[]>();
  for (const step of steps.filter(({ waitMinutes }) => waitMinutes)) {
    const time = waitHtml(step);
    alike.set(time, [...(alike.get(time) ?? []), step.n]);
  }
  return [...alike].map(([timeHtml, after]) => ({ timeHtml, after: after.join(", ") }));
}
