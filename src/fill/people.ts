import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";
import { keysOf } from "../model/world.js";
import { byRole, holdsOf } from "./stops.js";

/** Whom the job needs beside the one who does it. */
export interface People {
  /** The most that one step asks for. */
  people: number;
  /** The fewest that can do the job: those of that step, the fire watch, and one who did none of the work. */
  least: number;
  /** How many of them help. */
  helpers: number;
  /** Whether somebody must watch for fire. */
  watch: boolean;
  /** The step that releases that watch for good; empty where none does. */
  watchEnds: string;
  /** Who releases holds, and which. */
  roles: { role: string; numbers: string }[];
}

/** The people of a plan. */
export function peopleOf(steps: readonly Step[]): People {
  const people = Math.max(1, ...steps.map((step) => step.people));
  const roles = byRole(holdsOf(steps)).map(({ role, holds }) => ({
    role,
    numbers: holds.map(({ number }) => number).join(", "),
  }));
  const watch = steps.some(({ verb }) => verb === "watch");
  const watchEnds = endOfWatch(steps);
  const least = people + (watch ? 1 : 0) + (roles.length > 0 ? 1 : 0);
  return { people, least, helpers: people - 1, watch, watchEnds, roles };
}

/** Who or what a plan has watching: the keys of all that is set to watch. */
export function watchedIn(steps: readonly Step[]): Set<string> {
  return new Set(steps.filter(({ verb }) => verb === "watch").flatMap(keysOf));
}

function endOfWatch(steps: readonly Step[]): string {
  const watched = watchedIn(steps);
  const ends = (step: Step): boolean =>
    effectOf(step.verb) === "end" && keysOf(step).some((key) => watched.has(key));
  return steps.findLast(ends)?.n ?? "";
}

/** How many are there at some steps, from fewest to most where they differ: '1–2'. */
export function crewOf(people: readonly number[]): string {
  return [...new Set([Math.min(...people), Math.max(...people)])].join("–");
}

/** How many are there at a step: who counts bags before it counts with a second person. */
export function peopleAt(people: number, counts: boolean): number {
  return Math.max(people, counts ? 2 : 1);
}
