import { type OpenState, openStates } from "../open-now.js";
import { type Sheet, headOf } from "../sheet.js";
import { stopsOf } from "../stops.js";

/** What one person tells the next at the car, at one stop of the work. */
export const handover: Sheet = {
  name: "handover",
  applies: ({ steps }) => steps.length > 0,
  view: (input) => ({
    ...headOf(input),
    open: byKind(openStates(input.steps)),
    stops: stopsOf(input.steps),
  }),
};

/** Open states of one kind under one heading, in the order in which each kind comes first. */
function byKind(states: readonly OpenState[]): { kind: string; states: OpenState[] }[] {
  const kinds = [...new Set(states.map(({ kind }) => kind))];
  return kinds.map((kind) => ({ kind, states: states.filter((one) => one.kind === kind) }));
}
