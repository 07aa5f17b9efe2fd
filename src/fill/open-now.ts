import type { Step } from "../model/plan.js";
import { verbs } from "../model/verbs.js";
import { keyOf } from "../model/world.js";

/** A state of the car that somebody can walk into: from which step, and until which. */
export interface OpenState {
  /** The key of its words. */
  kind: string;
  from: string;
  until: string;
  /** The sentence that began it, where its kind does not say enough. */
  says: string;
}

const alone = ["isolate", "drain", "set-out", "shield", "unplug"];
const together = ["raise", "brace"];

/** Every dangerous or half-done state that the plan passes through, in the order in which it begins. */
export function openStates(steps: readonly Step[]): OpenState[] {
  const single = steps.filter(({ verb }) => alone.includes(verb)).map((step) => pair(step, steps));
  const grouped = together.flatMap((verb) => span(verb, steps, begins(verb), ends(verb)));
  const welded = joinedAgain(steps);
  const cuts = (step: Step): boolean => step.verb === "drill" && touches(step, welded);
  const welds = (step: Step): boolean => step.verb === "weld" && touches(step, welded);
  const joints = span("joint", steps, cuts, welds);
  const posted = new Set(steps.filter(begins("set-out")).flatMap(keysOf));
  const watches = steps.filter((step) => step.verb === "watch" && !touches(step, posted));
  const at = ({ from }: OpenState): number => steps.findIndex(({ n }) => n === from);
  return [...single, ...grouped, ...joints, ...watches.map(watch)].sort((a, b) => at(a) - at(b));
}

type Test = (step: Step) => boolean;

const begins = (verb: string): Test => {
  return (step) => step.verb === verb;
};
const ends = (verb: string): Test => begins(verbs[verb]?.pair ?? "");

function pair(step: Step, steps: readonly Step[]): OpenState {
  const keys = new Set(keysOf(step));
  const after = steps.slice(steps.indexOf(step) + 1);
  const end = after.find((one) => ends(step.verb)(one) && touches(one, keys));
  return { kind: step.verb, from: step.n, until: end?.n ?? "", says: step.says };
}

function span(kind: string, steps: readonly Step[], begin: Test, end: Test): OpenState[] {
  const [first, last] = [steps.find(begin), steps.findLast(end)];
  return first ? [{ kind, from: first.n, until: last?.n ?? "", says: "" }] : [];
}

function watch(step: Step): OpenState {
  return { kind: "watch", from: step.n, until: step.n, says: "" };
}

/** The joints that are drilled or parted and welded again. */
function joinedAgain(steps: readonly Step[]): Set<string> {
  const of = (verb: string): string[] => steps.filter(begins(verb)).flatMap(keysOf);
  const drilled = new Set(of("drill"));
  return new Set(of("weld").filter((key) => drilled.has(key)));
}

function touches(step: Step, keys: ReadonlySet<string>): boolean {
  return keysOf(step).some((key) => keys.has(key));
}

function keysOf(step: Step): string[] {
  return step.does.map(({ object, place }) => keyOf(object, place));
}
