import type { Step } from "../model/plan.js";
import { type Effect, effectOf } from "../model/verbs.js";
import { type Change, keyOf, keysOf } from "../model/world.js";
import { watchedIn } from "./people.js";
import type { Stop } from "./stops.js";

/** Something on the car that is not as it belongs: what it is, and each time from which step until which. */
export interface OpenState {
  /** The key of its words. */
  kind: string;
  name: string;
  spans: Span[];
  /** The stops at which it is open, by their letters: 'B to F, K'. */
  stops: string;
  /** The stops at which it goes home for the night, by their letters: somebody who watches. */
  nights: string;
}

/** From the step that begins it until the step that ends it; nothing where no step does. */
interface Span {
  from: string;
  until: string;
}

/** Every kind of open state, the one that hurts most first. */
const kinds = [
  "raise",
  "joint",
  "brace",
  "isolate",
  "drain",
  "watch",
  "set-out",
  "shield",
  "apply",
  "clamp",
  "trial",
  "part-join",
  "ease",
  "open",
  "off",
];

const opens: Partial<Record<Effect, string>> = {
  "cut-off": "off",
  "part-join": "part-join",
  ease: "ease",
  off: "off",
  "take-out": "off",
  "try-in": "trial",
};
const closes: readonly (Effect | undefined)[] = [
  "restore",
  "end",
  "on",
  "fit-new",
  "leave-off",
  "make-join",
  "settle",
];

/** Every open or half-done state that the plan passes through, by kind; what is opened twice has two spans. */
export function openStates(
  steps: readonly Step[],
  names: Readonly<Record<string, string>>,
  stops: readonly Stop[],
  to: string,
): OpenState[] {
  const watched = watchedIn(steps);
  const states = new Map<string, OpenState>();
  for (const { kind, key, from, until } of spansOf(steps)) {
    const nights = watched.has(key) ? nightsIn(stops, steps, { from, until }) : "";
    const id = `${kind} ${key}`;
    const state = states.get(id) ?? { kind, name: names[key] ?? key, spans: [], stops: "", nights };
    states.set(id, { ...state, spans: [...state.spans, { from, until }] });
  }
  for (const [id, state] of states)
    states.set(id, { ...state, stops: stopsIn(stops, steps, state.spans, to) });
  return kinds.flatMap((kind) => [...states.values()].filter((state) => state.kind === kind));
}

interface Opened {
  kind: string;
  key: string;
  task: string;
  from: string;
}

/** Walks through the plan and notes when each object opens and when it closes. */
function spansOf(steps: readonly Step[]): (Opened & Span)[] {
  const open = new Map<string, Opened>();
  const spans: (Opened & Span)[] = [];
  const close = (state: Opened, until: string): void => {
    open.delete(state.key);
    spans.push({ ...state, until: fixedAt(steps, state.kind, until) });
  };
  const kindFor = kindsOf(steps);
  for (const { task, n, does } of steps)
    for (const change of does) {
      const key = keyOf(change.object, change.place);
      const now = open.get(key);
      const kind = kindFor(change, key, now?.kind);
      for (const state of open.values())
        if (kind !== undefined && state.key === key) close(state, n);
        else if (ends(change, task, state, now)) close(state, n);
      if (kind === "watch") spans.push({ kind, key, task, from: n, until: n });
      else if (kind !== undefined) open.set(key, { kind, key, task, from: n });
    }
  for (const state of open.values()) close(state, "");
  const at = new Map(steps.map(({ n }, i) => [n, i]));
  return spans.sort((a, b) => (at.get(a.from) ?? 0) - (at.get(b.from) ?? 0));
}

/** A part that is set back stays open until the last of its fixings is in. */
function fixedAt(steps: readonly Step[], kind: string, until: string): string {
  const at = steps.findIndex(({ n }) => n === until);
  const set = steps[at];
  if (!["off", "ease"].includes(kind) || set?.phase !== "refit") return until;
  const fixed = steps
    .slice(at)
    .findLast(
      ({ task, position, verb }) =>
        task === set.task && position === set.position && effectOf(verb) === "in",
    );
  return fixed?.n ?? until;
}

type KindFor = (change: Change, key: string, now: string | undefined) => string | undefined;

/** Which state a change begins: what it does to the state of its object, or work that other work takes back. */
function kindsOf(steps: readonly Step[]): KindFor {
  const done = (verb: string): Set<string> =>
    new Set(steps.filter((step) => step.verb === verb).flatMap(keysOf));
  const [welded, removed] = [done("weld"), done("remove")];
  return ({ verb }, key, now) => {
    const effect = effectOf(verb);
    if (effect === "begin" || effect === "isolate") return verb;
    if (verb === "drill" && welded.has(key)) return "joint";
    if (verb === "apply" && removed.has(key)) return "apply";
    if (verb === "clamp") return now ?? "clamp";
    if (verb === "watch" && now === undefined) return "watch";
    return effect && opens[effect];
  };
}

/**
 * Whether a change ends a state, by what is open on the changed thing now: clamps are gone when the next thing of
 * their task is taken away that is open for no other reason.
 */
function ends({ verb }: Change, task: string, state: Opened, now: Opened | undefined): boolean {
  if (state.kind === "clamp")
    return verb === "remove" && state.task === task && (now === undefined || now === state);
  if (state !== now) return false;
  if (state.kind === "joint") return verb === "weld";
  if (state.kind === "apply") return verb === "remove";
  return closes.includes(effectOf(verb));
}

/** The letters of the stops inside some spans, runs of them together. */
function stopsIn(
  stops: readonly Stop[],
  steps: readonly Step[],
  spans: readonly Span[],
  to: string,
): string {
  const at = (n: string): number => steps.findIndex((step) => step.n === n);
  const inside = ({ n }: Stop): boolean =>
    spans.some(
      ({ from, until }) => at(n) > at(from) && at(n) < (until === "" ? steps.length : at(until)),
    );
  const runs: string[][] = [];
  for (const [i, stop] of stops.entries()) {
    if (!inside(stop)) continue;
    const before = stops[i - 1];
    const run = before && inside(before) ? runs.at(-1) : undefined;
    if (run) run.push(stop.letter);
    else runs.push([stop.letter]);
  }
  const said = (run: readonly string[]): string =>
    run.length < 3 ? run.join(", ") : `${run[0]} ${to} ${run.at(-1)}`;
  return runs.map(said).join(", ");
}

/** The stops for a night inside a span. */
function nightsIn(stops: readonly Stop[], steps: readonly Step[], { from, until }: Span): string {
  const at = (n: string): number => steps.findIndex((step) => step.n === n);
  return stops
    .filter(({ n, night }) => night && at(n) > at(from) && at(n) < at(until))
    .map(({ letter }) => letter)
    .join(", ");
}
