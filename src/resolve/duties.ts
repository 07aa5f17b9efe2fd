import type { Step } from "../model/plan.js";
import { isOf, stateWords, verbs } from "../model/verbs.js";
import { type Key, type Need, type World, changeKey, keysOf } from "../model/world.js";
import type { Scope, Visit } from "./closure.js";
import type { RecipeStep } from "../model/recipe-step.js";
import { referTo } from "./things.js";

/** A compiled step with the recipe step it came from. */
export interface Compiled {
  step: Step;
  raw: RecipeStep;
}

/** One visit's steps, by section, as compiled. */
export interface CompiledVisit {
  visit: Visit;
  strip: Compiled[];
  refit: Compiled[];
  check: Compiled[];
  /** prepare, record, work and close, in that order: a chain for repairs and for every-job recipes. */
  chain: Compiled[];
}

/** What the recipes ask for, kept by change: needs, gates and duties. */
export function dutiesOf(
  scope: Scope,
  compiled: readonly CompiledVisit[],
): Pick<World, "needs" | "gates" | "duties" | "records"> {
  const needs = new Map<string, Need[]>();
  const gates = new Map<string, Key[]>();
  const add = <T>(map: Map<string, T[]>, key: string, values: readonly T[]): void => {
    map.set(key, [...(map.get(key) ?? []), ...values]);
  };
  const each = (item: Compiled, give: (key: string) => void): void =>
    item.step.does.forEach((c) => give(changeKey(c)));
  for (const one of compiled) {
    for (const item of [...one.strip, ...one.refit]) {
      each(item, (key) =>
        add(needs, key, [
          ...written(scope, one.visit, item, 1),
          ...offNeeds(scope, one.visit, compiled).filter((need) => !spared(one, item, need)),
        ]),
      );
    }
    const listNeeds = (
      list: readonly Compiled[],
      start: readonly Need[],
      offNeedsOf: (step: Step) => readonly Need[],
    ): void => {
      let previous = start;
      for (const item of list) {
        const own = item.raw.needs ? written(scope, one.visit, item, 15) : previous;
        each(item, (key) => add(needs, key, [...own, ...offNeedsOf(item.step)]));
        previous = doneNeeds(item);
      }
    };
    const off = offNeeds(scope, one.visit, compiled);
    const reach = off.filter(({ law }) => law === 1);
    listNeeds(one.check, one.refit.flatMap(doneNeeds), () => reach);
    listNeeds(one.chain, [], ({ phase }) => (["record", "repair"].includes(phase) ? off : []));
    for (const list of [one.check, one.chain]) gate(list, (key, holds) => add(gates, key, holds));
  }
  const asked = compiled.flatMap(({ check, chain }) => [...check, ...chain]);
  const duties = asked.flatMap(({ step }) =>
    step.does.map((change) => ({ change, origin: step.origin })),
  );
  const records = asked
    .filter(({ step }) => step.phase === "record" && isOf(step.verb, "records"))
    .flatMap(({ step }) => step.does.map((change) => ({ change, origin: step.origin })));
  return { needs, gates, duties, records };
}

/** A hold stands before every later step of its own list. */
function gate(list: readonly Compiled[], give: (key: string, holds: Key[]) => void): void {
  const holds: Key[] = [];
  for (const { step } of list) {
    for (const change of step.does) give(changeKey(change), [...holds]);
    if (step.hold) holds.push(...keysOf(step));
  }
}

function doneNeeds({ step }: Compiled): Need[] {
  return step.does.map((change): Need => ({
    law: 15,
    origin: step.origin,
    done: changeKey(change),
  }));
}

/** The needs that a step writes itself: 'front-seat forward', 'floor wiped 2'. */
function written(scope: Scope, visit: Visit, { raw, step }: Compiled, law: 1 | 15): Need[] {
  return (raw.needs ?? []).flatMap((text): Need[] => {
    const [name = "", state = "", round] = text.split(" ");
    const keys = referTo(scope.things, name, visit.position, scope.car);
    const { origin } = step;
    const workVerb = Object.keys(verbs).find((verb) => verbs[verb]?.gives === state);
    if (workVerb === undefined || stateWords.includes(state))
      return keys.map((key): Need => ({
        law: ["live", "isolated"].includes(state) ? 6 : law,
        origin,
        key,
        state,
      }));
    const suffix = round === undefined ? "" : ` ${round}`;
    return keys.map((key): Need => ({ law, origin, done: `${workVerb} ${key}${suffix}` }));
  });
}

/** What a recipe needs off, eased or isolated, it needs so for every change it makes, both ways, and off for its checks. */
function offNeeds(scope: Scope, visit: Visit, compiled: readonly CompiledVisit[]): Need[] {
  const origin = { file: visit.recipe.source.file, path: [] };
  const isolated = visit.needsIsolated.map((key): Need => ({
    law: 6,
    origin,
    key,
    state: "isolated",
  }));
  const off = visit.after.flatMap(({ id, path, supply }): Need[] => {
    const other = compiled.find((one) => one.visit.id === id)?.visit;
    const { strips, eases } = other?.recipe.data ?? {};
    const part = strips ?? eases;
    if (other === undefined || part === undefined || supply !== undefined) return [];
    const keys = referTo(scope.things, part, other.position, scope.car);
    return keys.map((key): Need => ({
      law: 1,
      origin: { ...origin, path },
      key,
      state: strips ? "off" : "eased",
    }));
  });
  return [...isolated, ...off];
}

/** Where some steps of a recipe need a supply live, only its plugs and its part want it isolated. */
function spared({ strip }: CompiledVisit, { step }: Compiled, need: Need): boolean {
  const hasLive = strip.some(({ raw }) => (raw.needs ?? []).some((text) => text.endsWith(" live")));
  const isolated = "state" in need && need.state === "isolated";
  return isolated && hasLive && !["unplug", "plug-in", "lift-out", "put-in"].includes(step.verb);
}

/** Whether a recipe isolates a supply: it is then needed for that, not for its part. */
export function isolates(visit: Visit): boolean {
  return (visit.recipe.data.strip ?? []).some(
    (step) => step.isolate !== undefined || step.drain !== undefined,
  );
}
