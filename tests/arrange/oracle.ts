import graphlib from "graphlib";
import type { Step } from "../../src/model/plan.js";
import type { Task } from "../../src/model/task.js";

const sections = ["prepare", "strip", "record", "repair", "refit", "close"] as const;
const parting = new Set(["unplug", "plug-in", "lift-out", "put-in"]);

/**
 * Which step must come before which, step by step, from what the design says of a plan:
 * phases follow one another and a recipe keeps its own order; what a task needs off comes off first and
 * goes back last; a supply that a step needs live is isolated after it and restored before it; a step that needs
 * another part on comes after that part is back, one that needs it off before.
 */
export function orderOf(tasks: readonly Task[]): graphlib.Graph {
  const graph = new graphlib.Graph();
  const all = tasks.flatMap((task) => sections.flatMap((phase) => task.steps[phase]));
  for (const step of all) graph.setNode(step.id);
  const before = (first: readonly Step[], then: readonly Step[]): void => {
    for (const a of first) for (const b of then) graph.setEdge(a.id, b.id);
  };
  const blocks = sections.map((phase) => all.filter((step) => step.phase === phase));
  const filled = blocks.filter((block) => block.length > 0);
  for (const [i, block] of filled.entries()) before(block, filled[i + 1] ?? []);
  for (const task of tasks) {
    for (const phase of sections)
      task.steps[phase].forEach((step, i, list) => before(list.slice(0, i).slice(-1), [step]));
    for (const { step, task: id, back } of task.waitsFor ?? []) {
      const own = task.steps.refit.filter((one) => one.id === step);
      const other = tasks.find((one) => one.id === id)?.steps.refit ?? [];
      if (back) before(other, own);
      else before(own, other);
    }
    for (const id of task.after)
      for (const other of tasks.filter((one) => one.id === id)) nest(before, task, other);
  }
  return graph;
}

type Before = (first: readonly Step[], then: readonly Step[]) => void;

function nest(before: Before, task: Task, other: Task): void {
  const { strip, record, repair, refit } = task.steps;
  const own = [...strip, ...record, ...repair, ...refit];
  const supplies = task.needsIsolated.filter((supply) => other.isolates.includes(supply));
  if (supplies.length === 0 || task.liveSteps.length === 0) {
    before(other.steps.strip, own);
    before(own, other.steps.refit);
    return;
  }
  const live = new Set(
    task.liveSteps.filter(([, supply]) => supplies.includes(supply)).map(([id]) => id),
  );
  const isLive = (step: Step): boolean => live.has(step.id);
  before(strip.filter(isLive), other.steps.strip);
  before(other.steps.refit, refit.filter(isLive));
  const asks = ({ id }: Step): boolean => task.isolatedSteps?.includes(id) ?? false;
  const dead = own.filter((step) => (parting.has(step.verb) || asks(step)) && !isLive(step));
  before(other.steps.strip, dead);
  before(dead, other.steps.refit);
}

/**
 * The plain topological order: a task's steps of a phase are followed until they are held up; then comes the
 * first step that may come next, as the tasks list them; on the way back, as they list them from the last to the first.
 */
export function plainOf(tasks: readonly Task[], graph = orderOf(tasks)): Step[] {
  const left = sections.flatMap((phase) =>
    (phase === "refit" ? tasks.toReversed() : tasks).flatMap((task) => task.steps[phase]),
  );
  const waits = new Map(left.map(({ id }) => [id, graph.predecessors(id)?.length ?? 0]));
  const order: Step[] = [];
  const task = new Map(
    tasks.flatMap((one) =>
      sections.flatMap((phase) => one.steps[phase].map(({ id }) => [id, `${one.id} ${phase}`])),
    ),
  );
  while (left.length > 0) {
    const ready = left.filter(({ id }) => waits.get(id) === 0);
    const last = task.get(order.at(-1)?.id ?? "");
    const next = ready.find(({ id }) => task.get(id) === last) ?? ready[0];
    if (next === undefined) throw new Error("the order has a cycle");
    left.splice(left.indexOf(next), 1);
    order.push(next);
    for (const id of graph.successors(next.id) ?? []) waits.set(id, (waits.get(id) ?? 0) - 1);
  }
  return order;
}

/** How often zone (with its side) and first tool change along a list of steps; a step without one changes none. */
export function walked(steps: readonly Step[]): { zoneChanges: number; toolChanges: number } {
  let [zone, tool, zoneChanges, toolChanges] = ["", "", 0, 0];
  for (const step of steps) {
    const here = step.zone && `${step.zone} ${step.position}`;
    if (here && zone && here !== zone) zoneChanges += 1;
    const [hand = ""] = step.tools;
    if (hand && tool && hand !== tool) toolChanges += 1;
    zone = here || zone;
    tool = hand || tool;
  }
  return { zoneChanges, toolChanges };
}

/** The pairs of the graph that an order puts the wrong way round, or leaves out. */
export function breaches(graph: graphlib.Graph, order: readonly string[]): string[] {
  const at = new Map(order.map((id, i) => [id, i]));
  const lost = graph.nodes().filter((id) => !at.has(id));
  const wrong = graph.edges().filter(({ v, w }) => (at.get(v) ?? 0) >= (at.get(w) ?? 0));
  return [...lost.map((id) => `${id} is lost`), ...wrong.map(({ v, w }) => `${w} before ${v}`)];
}
