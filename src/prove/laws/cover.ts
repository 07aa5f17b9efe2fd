import type { Thing, World } from "../../model/world.js";
import type { Breach, Law, Moment } from "../law.js";
import { isOpenJoint } from "../joints.js";
import type { State } from "../state.js";

/** Law 2: a part goes on only when everything it hides is back, finished and released. */
export const cover: Law = {
  law: 2,
  code: "cover",
  name: "Cover",
  before: (moment) => (["on", "settle", "fit-new"].includes(moment.effect) ? hidden(moment) : []),
};

function hidden({ world, state, thing }: Moment): Breach[] {
  return thing.hides.flatMap((key) => {
    const under = world.things.get(key);
    return under
      ? open(world, state, under).map((what) => ({
          message: `the ${thing.words} would hide ${what}`,
          related: [{ origin: under.origin, label: "hidden by it" }],
        }))
      : [];
  });
}

/** What is still open at a thing that is about to be hidden. */
function open(world: World, state: State, thing: Thing): string[] {
  const away =
    thing.is === "part" && !["on", "left-off"].includes(state.parts.get(thing.key) ?? "on");
  if (away) return [`the ${thing.words}, which is not back`];
  const loose = [thing.key, ...thing.holders].filter((key) => isLoose(world, state, key));
  const worked = state.touched.has(thing.key) ? state.worked.get(thing.key) : undefined;
  const unfinished = worked ? thing.finish.filter((wanted) => !worked.has(wanted)) : [];
  const weld = isOpenJoint(state, thing.key) ? ["welded"] : [];
  const unseen =
    worked && ["surface", "joint"].includes(thing.is) && !state.releasedFor.has(thing.key);
  return [
    ...loose.map((key) => `'${key}', which is not back`),
    ...[...unfinished, ...weld].map((wanted) => `the ${thing.words}, which is not ${wanted}`),
    ...(unseen ? [`the ${thing.words}, which nobody has released`] : []),
  ];
}

function isLoose(world: World, state: State, key: string): boolean {
  const thing = world.things.get(key);
  const tally = state.tallies.get(key);
  if (thing?.fixing && tally)
    return tally.off + tally.added > 0 && tally.in + tally.leftOut < thing.fixing.full;
  return state.parted.has(key);
}
