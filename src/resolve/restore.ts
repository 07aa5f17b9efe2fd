import type { Step } from "../model/plan.js";
import type { PlanText } from "../model/generated/plan.js";
import { fixingsOf } from "./step-fixings.js";
import type { Words } from "../model/words.js";
import type { Task } from "../model/task.js";
import { type World, keyOf } from "../model/world.js";

/**
 * Steps from a plan file, given back what the file does not decide. Order, number, words and changes come
 * from the file; tools, holds, messages, times and what is used once come from the library.
 */
export function restore(
  text: PlanText,
  file: string,
  tasks: readonly Task[],
  world: World,
  { phrases }: Words,
): Step[] {
  const known = new Map(
    tasks.flatMap((task) => Object.values(task.steps).flat()).map((step) => [step.id, step]),
  );
  return text.steps.map((written, i) => {
    const { n, id, phase, says, does } = written;
    const base = known.get(id) ?? byHand(written, world, phrases["by-hand"] ?? "");
    return {
      ...base,
      n,
      id,
      phase,
      says,
      does,
      fixings: fixingsOf(does, world.things),
      origin: { file, path: ["steps", i] },
    };
  });
}

function byHand(
  { n, id, phase, says, does }: PlanText["steps"][number],
  world: World,
  title: string,
): Step {
  const [first] = does;
  const thing = world.things.get(keyOf(first.object, first.place));
  const empty = {
    tools: [],
    uses: [],
    messages: [],
    figures: [],
    facts: [],
    readings: [],
    checks: [],
    again: [],
    found: [],
    fixings: [],
    hides: [],
    touches: [],
  };
  return {
    ...empty,
    n,
    id,
    phase,
    task: "by-hand",
    title,
    position: first.place,
    verb: first.verb,
    says,
    does,
    night: false,
    people: thing?.people ?? 1,
    minutes: [0, 0, 0],
    wait: "",
    zone: thing?.zone ?? "",
    origin: { file: "", path: [] },
  };
}
