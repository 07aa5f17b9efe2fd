import type { Step } from "../model/plan.js";
import type { Change } from "../model/world.js";
import { keyOf, keysOf } from "../model/world.js";
import type { Words } from "../model/words.js";

/** How many welds or holes a step counts at one object. */
export interface Counted {
  n: string;
  count: number;
}

/** A row of welds: marked, drilled out and welded again. */
export interface Joint {
  key: string;
  name: string;
  marked: Counted | undefined;
  drilled: Counted | undefined;
  welded: Counted | undefined;
}

/** What is welded or drilled without being a joint of the car: a test piece, a row of holes in a new panel. */
export interface Other extends Counted {
  /** What is counted, as the recipe says it. */
  of: string;
  name: string;
  /** How the sheets lie; each position has as many. */
  positions: string[];
  /** Whether it is peeled apart, and not only looked at. */
  peeled: boolean;
}

/** What a plan welds. */
export interface Welding {
  joints: Joint[];
  tests: Other[];
  holes: Other[];
}

interface At extends Counted {
  verb: string;
  of: string;
  positions: string[];
  change: Change;
  key: string;
}

/** The joints, test pieces and plug holes of a plan, in the order in which they are welded or drilled. */
export function weldingOf(steps: readonly Step[], words: Words): Welding {
  const all = steps.flatMap(counted);
  const of = (verb: string): At[] => all.filter((one) => one.verb === verb);
  const find = (verb: string, key: string): Counted | undefined =>
    of(verb).findLast((one) => one.key === key);
  const drilled = new Set(of("drill").map(({ key }) => key));
  const welded = new Set(of("weld").map(({ key }) => key));
  const keys = [...welded].filter((key) => drilled.has(key));
  const peeled = new Set(steps.filter(({ verb }) => verb === "peel").flatMap(keysOf));
  const other = ({ n, count, of: what, positions, change, key }: At): Other => ({
    n,
    count,
    of: what,
    positions,
    peeled: peeled.has(key),
    name: nameOf(change, words),
  });
  return {
    joints: keys.flatMap((key) => {
      const change = of("weld").find((one) => one.key === key)?.change;
      const [marked, out, back] = [find("centre", key), find("drill", key), find("weld", key)];
      return change
        ? [{ key, name: nameOf(change, words), marked, drilled: out, welded: back }]
        : [];
    }),
    tests: of("weld")
      .filter(({ key }) => !drilled.has(key))
      .map(other),
    holes: of("bore").map(other),
  };
}

function counted({ n, verb, does, count: asked }: Step): At[] {
  return does.flatMap((change) =>
    change.count === undefined
      ? []
      : [
          {
            n,
            verb,
            count: change.count,
            of: asked?.of ?? "",
            positions: asked?.positions ?? [],
            change,
            key: keyOf(change.object, change.place),
          },
        ],
  );
}

/** An object's name as its recipe writes it, in words: 'front flange joint'. */
function nameOf({ object, place }: Change, { sides }: Words): string {
  const words = object.replaceAll("-", " ");
  return place === "" ? words : `${words}, ${sides[place] ?? place}`;
}
