import { verbs } from "../../model/verbs.js";
import { type Thing, type World, changeKey, keyOf } from "../../model/world.js";
import type { Breach, Law, Moment } from "../law.js";
import { type State, looseOf } from "../state.js";
import { breachIf } from "../law.js";

/** Law 4: off + added = back + renewed + left out on purpose, and each opened place ends full. */
export const count: Law = {
  law: 4,
  code: "count",
  name: "Count",
  before: (moment) => [...steps(moment), ...welds(moment), ...asked(moment)],
  end: (world, state) => [...state.tallies.keys()].flatMap((key) => place(world, state, key)),
};

function steps(moment: Moment): Breach[] {
  const { change, effect } = moment;
  const n = change.count ?? 0;
  if (!["out", "in", "leave-out"].includes(effect)) return [];
  return [
    ...breachIf(!Number.isInteger(n) || n < 1, `a count of ${n} is no count`),
    ...(effect === "in" ? goingIn(moment, n) : comingOut(moment, n)),
  ];
}

function comingOut({ state, change, effect, thing }: Moment, n: number): Breach[] {
  const inside = state.tallies.get(thing.key)?.in ?? 0;
  if (effect === "out")
    return breachIf(n > inside, `${n} of '${thing.key}' cannot come out: ${inside} are in`);
  const reason = change.reason ?? "";
  return breachIf(reason === "", `'${thing.key}' is left out without a reason`);
}

function goingIn({ state, change, thing }: Moment, n: number): Breach[] {
  const { fresh = 0 } = change;
  const { added = 0, renewed = 0, leftOut = 0 } = state.tallies.get(thing.key) ?? {};
  const more = added + Math.max(0, n - looseOf(state.tallies.get(thing.key)));
  const inside = state.tallies.get(thing.key)?.in ?? 0;
  const full = thing.fixing?.full ?? 0;
  return [
    ...breachIf(
      inside + n > full,
      `${inside + n} of '${thing.key}' would be in: there are places for ${full}`,
    ),
    ...breachIf(
      more > added && more > renewed + fresh + leftOut,
      `more of '${thing.key}' go back as old than came off`,
    ),
    ...breachIf(fresh < 0 || fresh > n, `more of '${thing.key}' are new than go in`),
  ];
}

/** Work on a joint that counts (welds found, drilled, welded) counts the range's number. */
function welds({ change, thing }: Moment): Breach[] {
  if (thing.welds === undefined) return [];
  const uncounted = change.count === undefined && ["drill", "weld"].includes(change.verb);
  return breachIf(
    uncounted || (change.count !== undefined && change.count !== thing.welds),
    `${change.verb} counts ${change.count ?? "nothing"} at '${keyOf(change.object, change.place)}', the range ${thing.welds}`,
  );
}

/** Other work that counts (holes drilled, test welds) counts what its recipe asks for. */
function asked({ world, change, effect, thing }: Moment): Breach[] {
  if (effect !== "work" || thing.welds !== undefined) return [];
  const duties = dutiesOf(world, changeKey(change));
  const wanted = duties.flatMap((one) => one.change.count ?? []);
  const [duty] = duties;
  return breachIf(
    wanted.length > 0 && !wanted.includes(change.count ?? 0),
    `'${changeKey(change)}' counts ${change.count ?? "nothing"}, its recipe ${wanted.join(" or ")}`,
    duty && { origin: duty.origin, label: "asked for here" },
  );
}

type Duty = World["duties"][number];

const known = new WeakMap<World, Map<string, Duty[]>>();

/** The duties that a change fulfils; those of a world are sorted by change once. */
function dutiesOf(world: World, change: string): readonly Duty[] {
  const duties = known.get(world) ?? new Map<string, Duty[]>();
  if (!known.has(world)) {
    known.set(world, duties);
    for (const duty of world.duties) {
      const key = changeKey(duty.change);
      duties.set(key, [...(duties.get(key) ?? []), duty]);
    }
  }
  return duties.get(change) ?? [];
}

function place(world: World, state: State, key: string): Breach[] {
  const tally = state.tallies.get(key);
  const thing = world.things.get(key);
  if (!tally || !thing?.fixing) return [];
  if (tally.off + tally.added === 0 && !isOpened(world, state, thing)) return [];
  const { off, added, back, renewed, leftOut } = tally;
  const related = { origin: thing.origin, label: "this place" };
  const identity = off + added === back + renewed + leftOut;
  return [
    ...breachIf(
      !identity,
      `'${key}': ${off} off + ${added} added is not ${back} back + ${renewed} renewed + ${leftOut} left out`,
      related,
    ),
    ...breachIf(
      added > renewed + leftOut,
      `'${key}': ${added} more go back than came off, and only ${renewed} are new`,
      related,
    ),
    ...breachIf(
      tally.in + leftOut !== thing.fixing.full + thing.fixing.extra,
      `'${key}' ends with ${tally.in} of ${thing.fixing.full}`,
      related,
    ),
  ];
}

/** A place is opened with its part, also where the car came with none of its fixings in. */
function isOpened(world: World, state: State, thing: Thing): boolean {
  const host = world.things.get(thing.host ?? "");
  if (host?.is !== "part" || state.parts.get(host.key) !== "on") return false;
  const eased = host.easedBy.includes(thing.key) ? ["ease", "settle"] : [];
  const opening = ["off", "on", "fit-new", ...eased];
  return Object.entries(verbs).some(
    ([verb, { effect }]) => opening.includes(effect) && state.done.has(`${verb} ${host.key}`),
  );
}
