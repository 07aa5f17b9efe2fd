import { type Step, phases } from "../model/plan.js";
import type { Task } from "../model/task.js";
import { changeKey } from "../model/world.js";
import { graphOf } from "./graph.js";
import { type Walk, nearOrder, plainOrder, walkOf } from "./order.js";

/** Steps in order, with the walk they make and the walk of the plain topological order. */
export interface Arranged {
  steps: Step[];
  walk: Walk;
  plain: Walk;
}

/** Puts all steps of the tasks into one stable order that respects needs and spares the feet. */
export function arrange(tasks: readonly Task[]): Arranged {
  const nodes = graphOf(tasks);
  const plain = number(byPhase(once(plainOrder(nodes).flatMap((node) => node.steps))));
  const near = number(byPhase(once(nearOrder(nodes).flatMap((node) => node.steps))));
  const [far, walk] = [walkOf(plain), walkOf(near)];
  const better = walk.zoneChanges <= far.zoneChanges && walk.toolChanges <= far.toolChanges;
  return better ? { steps: near, walk, plain: far } : { steps: plain, walk: far, plain: far };
}

function byPhase(steps: readonly Step[]): Step[] {
  return phases.flatMap((phase) => steps.filter((step) => step.phase === phase));
}

/** A function test or a search that several tasks ask for is done once. */
function once(steps: readonly Step[]): Step[] {
  const seen = new Set<string>();
  return steps.filter((step) => {
    const key = step.does.map(changeKey).join();
    return !["try", "inspect"].includes(step.verb) || (!seen.has(key) && seen.add(key));
  });
}

function number(steps: readonly Step[]): Step[] {
  return steps.map((step, i) => ({ ...step, n: String(i + 1) }));
}
