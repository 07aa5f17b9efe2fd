import { numberOf } from "./inch.js";
import type { Input } from "./input.js";
import { Refusal } from "./refusal.js";

/** A screw thread: its standard, nominal diameter and pitch in mm, and its written form. */
export interface Thread {
  name: string;
  series: "metric" | "unified";
  diameter: number;
  pitch: number;
}

/** Coarse pitch in mm first, then the usual fine ones, by nominal diameter in mm: ISO 261, from memory. */
const metric: Readonly<Record<string, readonly number[]>> = {
  3: [0.5],
  4: [0.7],
  5: [0.8],
  6: [1, 0.75],
  7: [1],
  8: [1.25, 1],
  10: [1.5, 1.25, 1],
  12: [1.75, 1.5, 1.25],
  14: [2, 1.5],
  16: [2, 1.5],
  18: [2.5, 1.5],
  20: [2.5, 1.5],
};

/** Threads per inch, coarse (UNC) and fine (UNF), by size: Shigley, Mechanical Engineering Design, 9th ed., table 8-2; the numbered sizes from memory. */
const unified: Readonly<Record<string, readonly number[]>> = {
  "#8": [32, 36],
  "#10": [24, 32],
  "#12": [24, 28],
  "1/4": [20, 28],
  "5/16": [18, 24],
  "3/8": [16, 24],
  "7/16": [14, 20],
  "1/2": [13, 20],
  "9/16": [12, 18],
  "5/8": [11, 18],
  "3/4": [10, 16],
};

const metricNames = Object.entries(metric).flatMap(([size, pitches]) =>
  pitches.map((pitch, index) => (index === 0 ? `M${size}` : `M${size}x${pitch}`)),
);
const unifiedNames = Object.entries(unified).flatMap(([size, counts]) =>
  counts.map((count) => `${size}-${count}`),
);

/** Reads 'M8', 'M10x1.25' or '5/16-18 UNC'; an unknown thread is refused with the nearest. */
export function readThread(text: string): Thread {
  const plain = text
    .trim()
    .replace(/\s*(UNC|UNF)$/i, "")
    .replace("×", "x");
  const found = metricThread(plain.toUpperCase()) ?? unifiedThread(plain);
  if (found !== undefined) return found;
  throw new Refusal("wrong", `unknown thread '${text}'`, [
    `Metric: ${metricNames.join(", ")}.`,
    `Unified: ${unifiedNames.join(", ")}.`,
    "A Whitworth, BSF or BA thread has no figure here: take the maker's manual.",
  ]);
}

function metricThread(text: string): Thread | undefined {
  const [, size = "", given] = /^M(\d+)(?:X([\d.]+))?$/.exec(text) ?? [];
  const pitches = metric[size] ?? [];
  const pitch = given === undefined ? pitches[0] : Number(given);
  if (pitch === undefined || !pitches.includes(pitch)) return undefined;
  const name = pitch === pitches[0] ? `M${size}` : `M${size}x${pitch}`;
  return { name, series: "metric", diameter: Number(size), pitch };
}

function unifiedThread(text: string): Thread | undefined {
  const [, size = "", count = ""] = /^(#?[\d/]+)\s*-\s*(\d+)$/.exec(text) ?? [];
  if (!unified[size]?.includes(Number(count))) return undefined;
  const inches = size.startsWith("#") ? 0.06 + 0.013 * Number(size.slice(1)) : numberOf(size);
  if (inches === undefined) return undefined;
  return {
    name: `${size}-${count}`,
    series: "unified",
    diameter: inches * 25.4,
    pitch: 25.4 / Number(count),
  };
}

/** The thread as an input of a figure. */
export const thread: Input<Thread> = {
  about: "the screw thread",
  takes: "M8, M10x1.25 or 5/16-18",
  read: readThread,
};

/** Tensile stress area in mm²: π/4 · (d − 0.938194·P)², ISO 898-1, clause on the nominal stress area; π/4 · (D − 0.974279/n)², ASME B1.1. */
export function stressAreaOf({ series, diameter, pitch }: Thread): number {
  const factor = series === "metric" ? 0.938194 : 0.974279;
  return (Math.PI / 4) * (diameter - factor * pitch) ** 2;
}
