import { type Sheet, headOf } from "../sheet.js";

/** One page that tells what each sheet of the pack is for, how many pages it has, who carries it and which one is the record. */
export const guide: Sheet = {
  name: "guide",
  countsPages: true,
  applies: () => true,
  view: (input) => ({
    ...headOf(input),
    has: Object.fromEntries(input.printed.map((name) => [name, true])),
  }),
};
