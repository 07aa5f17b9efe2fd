import { type Input, choice } from "./input.js";
import { Refusal } from "./refusal.js";
import { type Thread, stressAreaOf } from "./thread.js";

const ksi = 4448.2216152605 / 25.4 ** 2;

interface Band {
  /** Nominal diameter in mm up to which it holds. */
  upTo: number;
  /** Proof stress in MPa. */
  proof: number;
}

/** Proof stress by property class. 4.8, 5.8, 9.8 and 10.9: Shigley, 9th ed., table 8-11 (after ISO 898-1); 12.9: ISO 898-1:1999 as quoted; 4.6, 5.6, 6.8, 8.8 and the diameter limits: ISO 898-1, from memory. */
const classes = {
  "4.6": [{ upTo: 36, proof: 225 }],
  "4.8": [{ upTo: 16, proof: 310 }],
  "5.6": [{ upTo: 24, proof: 280 }],
  "5.8": [{ upTo: 24, proof: 380 }],
  "6.8": [{ upTo: 24, proof: 440 }],
  "8.8": [
    { upTo: 16, proof: 580 },
    { upTo: 36, proof: 600 },
  ],
  "9.8": [{ upTo: 16, proof: 650 }],
  "10.9": [{ upTo: 36, proof: 830 }],
  "12.9": [{ upTo: 36, proof: 970 }],
} as const satisfies Record<string, readonly Band[]>;

/** Proof stress by SAE J429 grade: Shigley, 9th ed., table 8-9; grade 8 also in US Navy NSTM chapter 075. */
const grades = {
  "grade-2": [{ upTo: 19.05, proof: 55 * ksi }],
  "grade-5": [{ upTo: 25.4, proof: 85 * ksi }],
  "grade-8": [{ upTo: 38.1, proof: 120 * ksi }],
} as const satisfies Record<string, readonly Band[]>;

/** A property class (ISO 898-1) or grade (SAE J429). */
export type Strength = keyof typeof classes | keyof typeof grades;

const strengths = [...Object.keys(classes), ...Object.keys(grades)] as Strength[];

/** The strength marked on the head, as an input. */
export const strength: Input<Strength> = choice("the class or grade marked on the head", strengths);

/** Proof load in N: stress area times proof stress; refuses a class that is not made for the thread. */
export function proofLoadOf(thread: Thread, marked: Strength): number {
  const bands: readonly Band[] = { ...classes, ...grades }[marked];
  const band = fits(thread, marked)
    ? bands.find(({ upTo }) => thread.diameter <= upTo + 1e-9)
    : undefined;
  if (band !== undefined) return band.proof * stressAreaOf(thread);
  throw new Refusal("refused", `no published proof stress of ${marked} for ${thread.name}`, [
    `ISO 898-1 classes go with M threads: ${Object.keys(classes).join(", ")}; 4.8 and 9.8 up to M16.`,
    `SAE J429 grades go with unified threads from 1/4: ${Object.keys(grades).join(", ")}.`,
  ]);
}

function fits({ series, diameter }: Thread, marked: Strength): boolean {
  return marked in classes ? series === "metric" : series === "unified" && diameter >= 6.35 - 1e-9;
}
