import { type Words, fillIn } from "../../model/words.js";
import { type OpenState, openStates } from "../open-now.js";
import { type Sheet, headOf } from "../sheet.js";
import { againAt, stopsOf } from "../stops.js";

/** What one person tells the next at the car, at one stop of the work. */
export const handover: Sheet = {
  name: "handover",
  applies: ({ steps }) => steps.length > 0,
  view: (input, words) => {
    const { steps, brief } = input;
    const stops = stopsOf(steps);
    const again = new Map(steps.map((step) => [step.n, againAt(step, steps, words)]));
    return {
      ...headOf(input),
      open: byKind(openStates(steps, brief.things, stops, words.phrases["to"] ?? "to"), words),
      stops: stops.map((stop) => ({ ...stop, again: again.get(stop.n) ?? "" })),
    };
  },
};

/** Open states of one kind under one heading, each with its spans in words. */
function byKind(states: readonly OpenState[], { phrases }: Words): object[] {
  const said = ({ from, until }: OpenState["spans"][number]): string =>
    from === until ? from : `${from} ${phrases["to"] ?? "to"} ${until}`.trim();
  const kinds = [...new Set(states.map(({ kind }) => kind))];
  return kinds.map((kind) => ({
    title: phrases[kind] ?? kind,
    states: states
      .filter((one) => one.kind === kind)
      .map((one) => ({
        ...one,
        steps: one.spans.map(said).join(", "),
        spoken: fillIn(phrases["open-thing"] ?? "", {
          name: one.name,
          kind: phrases[kind] ?? kind,
        }),
      })),
  }));
}
