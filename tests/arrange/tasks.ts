import fc from "fast-check";
import { type Phase, type Step, phases } from "../../src/model/plan.js";
import type { Task } from "../../src/model/task.js";

const seed = { min: 0, max: 2 ** 20 };
const zones = ["", "seats", "tunnel", "floor"];
const tools = ["", "socket-10", "socket-17", "trim-fork"];
const supply = "battery-supply";

/** A step that does nothing but stand in an order. */
export function blankStep(id: string, phase: Phase, verb: string, dice: number): Step {
  const tool = tools[dice % 4] ?? "";
  const empty = {
    fixings: [],
    uses: [],
    messages: [],
    figures: [],
    facts: [],
    readings: [],
    hides: [],
    touches: [],
  };
  return {
    ...empty,
    n: "",
    id,
    phase,
    task: id,
    title: id,
    verb,
    says: id,
    checks: [],
    again: [],
    found: [],
    position: ["", "left", "right"][dice % 3] ?? "",
    does: [{ verb, object: id, place: "" }],
    tools: tool === "" ? [] : [tool],
    night: false,
    people: 1,
    minutes: [0, 0, 0],
    wait: "",
    zone: zones[(dice >> 3) % 4] ?? "",
    origin: { file: "", path: [] },
  };
}

interface Seed {
  /** Which of the tasks before this one it needs off, by bit. */
  after: number;
  /** How many steps it has in each phase. */
  sizes: number[];
  dice: number;
  kind: "plain" | "dead" | "live";
}

const seeds = fc.array(
  fc.record<Seed>({
    after: fc.integer(seed),
    sizes: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 6, maxLength: 6 }),
    dice: fc.integer(seed),
    kind: fc.constantFrom("plain", "plain", "dead", "live"),
  }),
  { minLength: 1, maxLength: 8 },
);

/** Random tasks whose needs never go round; one of them isolates the battery, some need it live at times. */
export const randomTasks: fc.Arbitrary<Task[]> = fc
  .tuple(seeds, fc.array(fc.integer(seed), { minLength: 9, maxLength: 9 }))
  .map(([list, keys]) => {
    const tasks: Task[] = [];
    for (const [i, one] of list.entries()) tasks.push(taskOf(one, `t${i}`, tasks, i > 0));
    const key = (task: Task): number => keys[Number(task.id.slice(1))] ?? 0;
    return tasks.toSorted((a, b) => key(a) - key(b));
  });

function taskOf(one: Seed, id: string, tasks: readonly Task[], canNeed: boolean): Task {
  const kind = canNeed ? one.kind : "plain";
  const dead = new Set(["t0"]);
  for (const task of tasks)
    if (task.needsIsolated.length > 0 || task.after.some((other) => dead.has(other)))
      dead.add(task.id);
  const chosen = tasks.filter((_, i) => (one.after >> i) & 1).map((task) => task.id);
  // What a task with a live step needs off must come off with the supply live, so it cannot need it isolated in its turn.
  const after = kind === "live" ? chosen.filter((other) => !dead.has(other)) : chosen;
  const needs = kind !== "plain";
  const step = (phase: Phase, i: number, verb: string): Step =>
    blankStep(`${id}.${phase}.${i}`, phase, verb, one.dice + 7 * i);
  const steps = Object.fromEntries(
    phases.map((phase, p) => [
      phase,
      kind === "live" && (phase === "strip" || phase === "refit")
        ? liveList(phase, step)
        : Array.from({ length: one.sizes[p] ?? 0 }, (_, i) => step(phase, i, "undo")),
    ]),
  ) as Record<Phase, Step[]>;
  const live = [...steps.strip, ...steps.refit].filter(({ verb }) => verb === "move");
  return {
    id,
    title: id,
    frames: false,
    steps,
    after: needs ? [...new Set([...after, "t0"])] : after,
    isolates: canNeed ? [] : [supply],
    needsIsolated: needs ? [supply] : [],
    liveSteps: live.map((one) => [one.id, supply] as const),
  };
}

/** As a seat moved by a motor does it: run it, undo it, run it, undo it, part its plug, lift it out; and back. */
function liveList(
  phase: "strip" | "refit",
  step: (phase: Phase, i: number, verb: string) => Step,
): Step[] {
  const strip = ["move", "undo", "move", "undo", "unplug", "lift-out"];
  const refit = ["put-in", "plug-in", "move", "do-up", "move", "do-up"];
  return (phase === "strip" ? strip : refit).map((verb, i) => step(phase, i, verb));
}
