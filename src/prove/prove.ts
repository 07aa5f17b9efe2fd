import type { Step } from "../model/plan.js";
import type { CountLine, Finding, Proof } from "../model/proof.js";
import { effectOf } from "../model/verbs.js";
import type { Change, World } from "../model/world.js";
import { apply, thingOf } from "./apply.js";
import type { Breach, Law } from "./law.js";
import { laws } from "./laws.js";
import { type State, startOf } from "./state.js";

/** Simulates a plan, whoever wrote it, on a model of the car and decides every law. */
export function prove(world: World, steps: readonly Step[]): Proof {
  const state = startOf(world);
  const found = new Map<Law, Finding[]>(laws.map((law) => [law, []]));
  for (const step of steps)
    for (const change of step.does) judge(world, state, step, change, found);
  for (const law of laws)
    found.get(law)?.push(...(law.end?.(world, state) ?? []).map((breach) => finding(law, breach)));
  const verdicts = laws.map((law) => {
    const findings = found.get(law) ?? [];
    return { law: law.law, name: law.name, held: findings.length === 0, findings };
  });
  return { laws: verdicts, count: counts(world, state) };
}

function judge(
  world: World,
  state: State,
  step: Step,
  change: Change,
  found: ReadonlyMap<Law, Finding[]>,
): void {
  const thing = thingOf(world, change);
  const [first] = laws;
  const effect = effectOf(change.verb);
  if (!thing || effect === undefined) {
    const message = `'${change.verb} ${change.object}' names nothing on this car`;
    if (first) found.get(first)?.push(finding(first, { message }, step));
    return;
  }
  const moment = { world, state, step, change, thing, effect };
  for (const law of laws) {
    const breaches = law.before?.(moment) ?? [];
    if (breaches.length > 0)
      found.get(law)?.push(...breaches.map((breach) => finding(law, breach, step)));
  }
  apply(state, change, world);
}

function finding(law: Law, breach: Breach, step?: Step): Finding {
  return {
    code: law.code,
    message: breach.message,
    ...(step ? { step: { id: step.id, n: step.n, origin: step.origin } } : {}),
    hints: breach.hints ?? [],
    related: breach.related ?? [],
  };
}

function counts(world: World, state: State): CountLine[] {
  return [...state.tallies].flatMap(([key, { off, added, back, renewed, leftOut }]) => {
    const thing = world.things.get(key);
    const opened = off + added + leftOut > 0;
    return thing && opened
      ? [{ kind: thing.name, place: thing.position, off, added, back, renewed, leftOut }]
      : [];
  });
}
