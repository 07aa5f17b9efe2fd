import type { Step } from "../model/plan.js";
import { type Effect, effectOf } from "../model/verbs.js";
import { type Change, keyOf, keysOf } from "../model/world.js";
import { watchedIn } from "./people.js";
import { runList } from "./step-list.js";
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

type Spanned = Omit<OpenState, "stops" | "nights"> & { key: string };

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
  const isIn = inside(steps);
  const states = new Map<string, Spanned>();
  for (const { kind, key, from, until } of spansOf(steps)) {
    const id = `${kind} ${key}`;
    const spans = [...(states.get(id)?.spans ?? []), { from, until }];
    states.set(id, { kind, key, name: names[key] ?? key, spans });
  }
  const atStops = ({ key, ...state }: Spanned): OpenState => {
    const open = [...stops.entries()].filter(([, stop]) =>
      state.spans.some((span) => isIn(stop, span)),
    );
    const nights = open.filter(([, { night }]) => night && watched.has(key));
    return {
      ...state,
      stops: runList(
        open.map(([at]) => at),
        (at) => stops[at]?.letter ?? "",
        to,
      ),
      nights: nights.map(([, { letter }]) => letter).join(", "),
    };
  };
  return kinds.flatMap((kind) =>
    [...states.values()].filter((state) => state.kind === kind).map(atStops),
  );
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

/** Whether a stop lies inside a span; one that nothing closes goes on to the end. */
function inside(steps: readonly Step[]): (stop: Stop, span: Span) => boolean {
  const places = new Map(steps.map(({ n }, i) => [n, i]));
  const at = (n: string): number => places.get(n) ?? steps.length;
  return ({ n }, { from, until }) => at(n) > at(from) && at(n) < at(until);
}
