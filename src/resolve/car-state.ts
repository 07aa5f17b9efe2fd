import type { CarFile } from "../model/generated/car.js";
import type { Fitted } from "./when.js";

type Found = NonNullable<CarFile["found"]>[number];

/** One car as the job meets it: its options, and what was found on it. */
export interface CarState {
  fitted: Fitted;
  found: readonly Found[];
  /** The positions that an `at` means on this car; one empty position where it is left out. */
  positions(at: string | string[] | undefined): string[];
  present(fixing: string, position: string, full: number): number;
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
    present: (fixing, position, full) =>
      found.find((n) => n.fixing === fixing && here(n, position))?.present ?? full,
    absent: (part, position) => {
      const note = found.find((n) => n.part === part && n.absent === true && here(n, position));
      return note && (note.then ?? "fit-new");
    },
  };
}
