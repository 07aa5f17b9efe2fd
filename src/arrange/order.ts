import type { Step } from "../model/plan.js";
import type { Node } from "./graph.js";

/** How often a technician changes zone and tool along a list of steps. */
export interface Walk {
  zoneChanges: number;
  toolChanges: number;
}

/** Counts changes of zone and of tool; a step without either changes nothing. */
export function walkOf(steps: readonly Step[]): Walk {
  const zones = steps.map((step) => (step.zone === "" ? "" : `${step.zone}@${step.position}`));
  const tools = steps.map((step) => step.tools[0] ?? "");
  return { zoneChanges: changes(zones), toolChanges: changes(tools) };
}

function changes(values: readonly string[]): number {
  const said = values.filter((value) => value !== "");
  return said.filter((value, i) => i > 0 && value !== said[i - 1]).length;
}

/** Plain topological order: the first ready node, in the order in which the nodes stand. */
export function plainOrder(nodes: readonly Node[]): Node[] {
  return pick(nodes, (ready) => ready[0]);
}

/** Topological order that stays in the zone, then keeps the tool, then follows the nodes' own order. */
export function nearOrder(nodes: readonly Node[]): Node[] {
  return pick(nodes, (ready, done) => {
    const last = done.at(-1)?.steps.at(-1);
    const cost = (node: Node): number => {
      const first = node.steps[0];
      if (last === undefined || first === undefined) return 0;
      const zone = first.zone !== last.zone ? 4 : first.position !== last.position ? 2 : 0;
      return zone + (first.tools[0] === last.tools[0] ? 0 : 1);
    };
    return ready.reduce<Node | undefined>(
      (best, node) => (best === undefined || cost(node) < cost(best) ? node : best),
      undefined,
    );
  });
}

type Choice = (ready: readonly Node[], done: readonly Node[]) => Node | undefined;

function pick(nodes: readonly Node[], choose: Choice): Node[] {
  const done: Node[] = [];
  const ids = new Set<string>();
  const left = new Set(nodes);
  while (left.size > 0) {
    const ready = [...left].filter((node) => [...node.before].every((id) => ids.has(id)));
    const next = choose(ready, done);
    if (next === undefined) break;
    done.push(next);
    ids.add(next.id);
    left.delete(next);
  }
  return done;
}
