import type { Outcome } from "../diagnostics/diagnostic.js";
import { didYouMean } from "../diagnostics/nearest.js";
import type { PlanFile } from "../model/plan-file.js";
import type { Step, TaskBrief } from "../model/plan.js";
import type { Origin } from "../model/source.js";
import { effectOf, verbs } from "../model/verbs.js";
import type { Change } from "../model/world.js";

/** Says where something was written, as file, line and column. */
export type PlaceOf = (origin: Origin) => string;

/**
 * Tells in plain words why a step is in a plan: the chain of needs that brought it in, the options and found
 * notes behind it, what undoes it and which laws hold that. A step is named by its id, its number or its part.
 */
export function why(plan: PlanFile, name: string, placeOf: PlaceOf): Outcome<string[]> {
  const step = plan.steps.find(({ id, n, part }) => [id, n, part].includes(name));
  if (!step) {
    const known = plan.steps.flatMap(({ id, part }) => [id, ...(part === undefined ? [] : [part])]);
    const message = `This plan has no step and no part '${name}'.`;
    const hints = didYouMean(name, new Set(known));
    return { diagnostics: [{ code: "unknown-name", message, hints, related: [] }] };
  }
  const lines = [
    `Step ${step.n} (${step.id}): ${step.says}`,
    ...chain(plan, step, placeOf),
    ...step.found.map((note) => `Found on this car: ${note}`),
    ...step.does.flatMap((change) => undoing(plan, step, change)),
    ...step.does.flatMap((change) => proof(plan, change)),
  ];
  return { value: lines, diagnostics: [] };
}

const asks: Record<string, string> = {
  "needs-off": "needs it off",
  "needs-eased": "needs it eased",
  "needs-isolated": "needs its supply isolated",
};

/** From the step's task up to the job by the shortest way, one need a line. */
function chain({ brief, car }: PlanFile, step: Step, placeOf: PlaceOf): string[] {
  const lines: string[] = [];
  const byId = new Map(brief.tasks.map((task) => [task.id, task]));
  const depths = depthsOf(brief.tasks);
  const own = step.position === "" ? step.task : `${step.task}@${step.position}`;
  for (let task = byId.get(own); task;) {
    const depth = depths.get(task.id) ?? 0;
    const reason = task.because.find((one) => (depths.get(one.task) ?? depth) < depth);
    lines.push(...optionLines(task, car.fitted));
    const words = reason
      ? `because '${byId.get(reason.task)?.title ?? ""}' ${asks[reason.need] ?? reason.need} (${placeOf(reason.origin)})`
      : "because it is the job, or part of every job";
    lines.push(`${nameOf(task)} is in the plan ${words}.`);
    task = reason && byId.get(reason.task);
  }
  return lines.length > 0 ? lines : ["It was written into the plan by hand."];
}

/** How many needs lie between each task and the job. */
function depthsOf(tasks: readonly TaskBrief[]): Map<string, number> {
  const depths = new Map<string, number>();
  for (let depth = 0; depth <= tasks.length; depth++) {
    const next = tasks.filter(
      ({ id, because }) =>
        !depths.has(id) &&
        (depth === 0 ? because.length === 0 : because.some(({ task }) => depths.has(task))),
    );
    for (const { id } of next) depths.set(id, depth);
  }
  return depths;
}

function nameOf({ title, position }: TaskBrief): string {
  return position === "" ? `'${title}'` : `'${title}', ${position},`;
}

function optionLines({ title, when }: TaskBrief, fitted: Record<string, string>): string[] {
  return Object.keys(when).map(
    (option) => `'${title}' is for cars with ${option}=${fitted[option]}.`,
  );
}

/** The first later step that takes a change back. */
function undoing({ steps }: PlanFile, step: Step, change: Change): string[] {
  const pairs = [verbs[change.verb]?.pair, ...(change.verb === "lift-out" ? ["fit-new"] : [])];
  const later = steps.slice(steps.indexOf(step) + 1);
  const back = later.find((one) =>
    one.does.some(
      ({ verb, object, place }) =>
        pairs.includes(verb) && object === change.object && place === change.place,
    ),
  );
  return back ? [`It is taken back at step ${back.n}: ${back.says}`] : [];
}

const lawsOf: Record<string, number[]> = {
  out: [4],
  in: [4],
  "part-join": [6],
  "make-join": [6],
  off: [1, 3],
  on: [2, 3],
  ease: [1, 3],
  settle: [2, 3],
  isolate: [6],
  restore: [6],
  release: [7],
  prove: [6],
  work: [15],
};

function proof({ proof: { laws }, count }: PlanFile, { verb, object, place }: Change): string[] {
  const numbers = lawsOf[effectOf(verb) ?? ""] ?? [];
  const held = laws
    .filter(({ law }) => numbers.includes(law))
    .map(({ law, name, held: good }) => `law ${law}, ${name}: ${good ? "held" : "broken"}`);
  const line = count.find((one) => one.kind === object && one.place === place);
  const sum = line
    ? [
        `Count: ${line.off} off + ${line.added} added = ${line.back} back + ${line.renewed} renewed + ${line.leftOut} left out.`,
      ]
    : [];
  return [...(held.length > 0 ? [`Proven by ${held.join("; ")}.`] : []), ...sum];
}
