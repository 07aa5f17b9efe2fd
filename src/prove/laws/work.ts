import { changeKey } from "../../model/world.js";
import type { Law } from "../law.js";
import { unmet } from "../needs.js";

/** Law 15: each piece of work that the recipes ask for is done, after what it needs. */
export const work: Law = {
  law: 15,
  code: "work",
  name: "Work",
  before: (moment) => unmet(moment, 15),
  end: (world, state) =>
    world.duties
      .filter(({ change }) => !state.done.has(changeKey(change)))
      .map(({ change, origin }) => ({
        message: `'${changeKey(change)}' is never done`,
        related: [{ origin, label: "asked for here" }],
      })),
};
