import type { CarFile } from "../model/generated/car.js";
import type { Fitted } from "./when.js";

type Found = NonNullable<CarFile["found"]>[number];

/** What was found of one fixing at one place. */
export interface FoundFixing {
  /** How many are in, those too many with them. */
  present: number;
  /** How many are too many. */
  extra: number;
  /** How many of them go back. */
  sound: number;
  /** The kind of fastener that is there instead. */
  as?: string;
  note?: string;
}

/** One car as the job meets it: its options, and what was found on it. */
export interface CarState {
  fitted: Fitted;
  found: readonly Found[];
  /** The positions that an `at` means on this car; one empty position where it is left out. */
  positions(at: string | string[] | undefined): string[];
  /** What was found of a fixing at a position. */
  fixing(name: string, position: string, full: number): FoundFixing;
  /** Whether a note is about this position. */
  here(note: Found, position: string): boolean;
  absent(part: string, position: string): "fit-new" | "leave-off" | undefined;
}

const opposite: Record<string, string> = { left: "right", right: "left" };

/** Builds the state of a car from its options, its found notes and the side on which the driver sits. */
export function carState(
  fitted: Fitted,
  found: readonly Found[],
  driver: string | undefined,
): CarState {
  const place = (at: string): string[] => {
    if (at === "both") return ["left", "right"];
    if (at === "driver") return [driver ?? "left"];
    if (at === "passenger") return [opposite[driver ?? "left"] ?? "right"];
    return [at];
  };
  const positions = (at: string | string[] | undefined): string[] =>
    at === undefined ? [""] : [at].flat().flatMap(place);
  const here = (note: Found, position: string): boolean =>
    note.at === undefined || positions(note.at).includes(position);
  return {
    fitted,
    found,
    positions,
    here,
    fixing: (name, position, full) =>
      foundFixing(
        found.find((n) => n.fixing === name && here(n, position)),
        full,
      ),
    absent: (part, position) => {
      const note = found.find((n) => n.part === part && n.absent === true && here(n, position));
      return note && (note.refit ?? "fit-new");
    },
  };
}

function foundFixing(note: Found | undefined, full: number): FoundFixing {
  const { present = full, extra = 0, damaged = 0, as } = note ?? {};
  const sound = as === undefined ? Math.max(0, present - damaged) : 0;
  const own = { present: present + extra, extra, sound };
  return { ...own, ...(as === undefined ? {} : { as }), ...(note ? { note: note.note } : {}) };
}
