import { type Phase, type Step, phases } from "../model/plan.js";
import type { Task } from "../model/task.js";

/** A run of steps that stays together, and the nodes that must come before it. */
export interface Node {
  id: string;
  steps: readonly Step[];
  before: Set<string>;
}

/**
 * Cuts tasks into runs and draws the edges between them; edges always lead forward in time. Where no edge
 * decides, what came off last goes back first: nobody works over a seat, and a supply comes back late.
 */
export function graphOf(tasks: readonly Task[]): Node[] {
  const nodes = new Map<string, Node>();
  for (const phase of phases)
    for (const task of phase === "refit" ? tasks.toReversed() : tasks) cut(nodes, task, phase);
  const edge = (from: string, to: string): void => {
    if (nodes.has(from)) nodes.get(to)?.before.add(from);
  };
  for (const task of tasks) {
    const own = [...nodes.keys()].filter((id) => id.startsWith(`${task.id} `));
    for (const [i, id] of own.entries()) if (i > 0) edge(own[i - 1] ?? "", id);
    for (const id of task.after)
      for (const other of tasks.filter((one) => one.id === id)) nest(nodes, edge, task, other);
  }
  for (const task of tasks.filter((one) => one.isolates.length > 0)) live(nodes, edge, tasks, task);
  for (const task of tasks.filter((one) => one.frames)) frame(nodes, edge, task);
  for (const task of tasks) wait(nodes, edge, task);
  barriers(nodes, edge);
  return [...nodes.values()];
}

function cut(nodes: Map<string, Node>, task: Task, phase: Phase): void {
  const liveIds = new Map(task.liveSteps);
  let run: Step[] = [];
  let live: boolean | undefined;
  let n = 0;
  const close = (): void => {
    if (run.length === 0) return;
    const id = `${task.id} ${phase} ${n++}${live === true ? " live" : ""}`;
    nodes.set(id, { id, steps: run, before: new Set() });
    run = [];
  };
  const waiting = new Set((task.waitsFor ?? []).map((one) => one.step));
  for (const step of task.steps[phase]) {
    if (waiting.has(step.id)) close();
    const want = stateWanted(task, liveIds, step);
    if (want !== undefined && live !== undefined && want !== live) close();
    live = want ?? live;
    run.push(step);
  }
  close();
}

/** Whether a step wants its supply live (true), isolated (false) or does not mind. */
function stateWanted(
  task: Task,
  liveIds: ReadonlyMap<string, string>,
  step: Step,
): boolean | undefined {
  if (liveIds.has(step.id)) return true;
  const parts = ["unplug", "plug-in", "lift-out", "put-in"].includes(step.verb);
  const asks = task.isolatedSteps?.includes(step.id) ?? false;
  return task.needsIsolated.length > 0 && (parts || asks) ? false : undefined;
}

type Edge = (from: string, to: string) => void;

/** A task that needs another off is touched after it came off and before it goes back; live steps need no isolator. */
function nest(nodes: Map<string, Node>, edge: Edge, task: Task, other: Task): void {
  for (const id of nodes.keys()) {
    if (!id.startsWith(`${task.id} `) || (isLive(id) && other.isolates.length > 0)) continue;
    for (const way of nodes.keys()) {
      if (!way.startsWith(`${other.id} `)) continue;
      if (way.startsWith(`${other.id} strip`) && !id.includes(" prepare ")) edge(way, id);
      if (way.startsWith(`${other.id} refit`) && !id.includes(" close ")) edge(id, way);
    }
  }
}

function isLive(id: string): boolean {
  return id.endsWith(" live");
}

/** Steps that need a supply live come before it is isolated and after it is restored. */
function live(nodes: Map<string, Node>, edge: Edge, tasks: readonly Task[], isolator: Task): void {
  const way = (phase: Phase): string[] =>
    [...nodes.keys()].filter((id) => id.startsWith(`${isolator.id} ${phase} `));
  for (const task of tasks) {
    for (const id of [...nodes.keys()].filter(
      (one) => one.startsWith(`${task.id} `) && isLive(one),
    )) {
      if (id.includes(" strip ")) for (const isolate of way("strip")) edge(id, isolate);
      if (id.includes(" refit ")) for (const restore of way("refit")) edge(restore, id);
    }
  }
}

/** A refit step that waits for a neighbour to be back comes after its way back; one that wants it off, before. */
function wait(nodes: Map<string, Node>, edge: Edge, task: Task): void {
  for (const { step, task: other, back } of task.waitsFor ?? []) {
    const own = [...nodes.values()].find(({ steps }) => steps.some(({ id }) => id === step));
    for (const id of nodes.keys()) {
      if (!own || !id.startsWith(`${other} refit`)) continue;
      if (back) edge(id, own.id);
      else edge(own.id, id);
    }
  }
}

/** What opens and closes every job stands first in its phases, and last in the close. */
function frame(nodes: Map<string, Node>, edge: Edge, task: Task): void {
  for (const own of nodes.keys()) {
    const [id, phase = ""] = own.split(" ");
    if (id !== task.id) continue;
    for (const other of nodes.keys()) {
      const [otherId, otherPhase] = other.split(" ");
      if (otherId === task.id || otherPhase !== phase) continue;
      if (phase === "close") edge(other, own);
      else edge(own, other);
    }
  }
}

/** Phases follow one another. */
function barriers(nodes: Map<string, Node>, edge: Edge): void {
  const ids = [...nodes.keys()];
  const phaseOf = (id: string): number => phases.indexOf((id.split(" ")[1] ?? "prepare") as Phase);
  for (const a of ids) for (const b of ids) if (phaseOf(a) < phaseOf(b)) edge(a, b);
}
