import type { RangeFile } from "../model/generated/range.js";
import type { Filed } from "../model/library.js";
import type { Path } from "../model/source.js";
import { type FixingFacts, type Instead, type Thing, keyOf } from "../model/world.js";
import type { CarState, FoundFixing } from "./car-state.js";
import { matches } from "./when.js";

type Part = RangeFile["parts"][string];
type Fixings = NonNullable<Part["held-by"]>;
type Joins = NonNullable<Part["plugs"]>;
type Entry = { name: string; at?: string | string[]; zone?: string };

/** Every object of the range that this car has, from the range's inventory alone. */
export function thingsOf(range: Filed<RangeFile>, car: CarState): Map<string, Thing> {
  const build = new Builder(range, car);
  const { parts, supplies = {}, surfaces = {}, joints = {}, functions = {} } = range.data;
  for (const [name, supply] of Object.entries(supplies))
    build.each("supply", name, supply, ["supplies", name]);
  for (const [name, part] of Object.entries(parts)) build.part(name, part);
  for (const [name, surface] of Object.entries(surfaces)) build.surface(name, surface);
  for (const [name, joint] of Object.entries(joints))
    for (const thing of build.each("joint", name, joint, ["joints", name])) {
      thing.welds = joint.welds;
      thing.structural = joint.structural ?? false;
    }
  for (const [name, fn] of Object.entries(functions)) build.function(name, fn);
  return build.finish();
}

/** A thing with nothing yet said of it. */
export function blankThing(
  seed: Pick<Thing, "is" | "name" | "words" | "position" | "zone" | "origin">,
): Thing {
  const empty = {
    holders: [],
    hides: [],
    weldedBy: [],
    easedBy: [],
    proves: [],
    finish: [],
    looksAt: [],
  };
  return { ...seed, key: keyOf(seed.name, seed.position), people: 1, ...empty };
}

class Builder {
  private readonly things = new Map<string, Thing>();
  private readonly later: (() => void)[] = [];

  private readonly range: Filed<RangeFile>;
  private readonly car: CarState;

  constructor(range: Filed<RangeFile>, car: CarState) {
    this.range = range;
    this.car = car;
  }

  each(is: Thing["is"], name: string, entry: Entry, path: Path): Thing[] {
    return this.car.positions(entry.at).map((position) => {
      const zone = entry.zone ?? "";
      const origin = { file: this.range.source.file, path };
      const thing = blankThing({ is, name, words: entry.name, position, zone, origin });
      this.things.set(thing.key, thing);
      return thing;
    });
  }

  part(name: string, part: Part): void {
    if (!matches(part.when, this.car.fitted)) return;
    for (const thing of this.each("part", name, part, ["parts", name])) {
      const { position } = thing;
      thing.people = part.people ?? 1;
      if (part.critical !== undefined) thing.critical = part.critical;
      const absent = this.car.absent(name, position);
      if (absent !== undefined) thing.absent = absent;
      this.fixings(thing, part["held-by"] ?? {}, ["parts", name, "held-by"]);
      this.joins(thing, part.plugs ?? {}, ["parts", name, "plugs"]);
      this.joins(thing, part.hooks ?? {}, ["parts", name, "hooks"], true);
      this.later.push(() => {
        thing.hides = this.keys(part.hides, position);
        thing.weldedBy = this.keys(part["welded-by"], position);
        thing.easedBy = this.keys(part["eased-by"], position);
      });
    }
  }

  surface(name: string, surface: NonNullable<RangeFile["surfaces"]>[string]): void {
    const path = ["surfaces", name];
    for (const thing of this.each("surface", name, surface, path)) {
      thing.finish = surface.finish ?? [];
      this.fixings(thing, surface["closed-by"] ?? {}, [...path, "closed-by"]);
    }
  }

  function(name: string, fn: NonNullable<RangeFile["functions"]>[string]): void {
    if (!matches(fn.when, this.car.fitted)) return;
    for (const thing of this.each("function", name, fn, ["functions", name])) {
      if (fn.supply !== undefined) thing.supply = fn.supply;
      this.later.push(() => (thing.proves = this.keys(fn.proves, thing.position)));
    }
  }

  finish(): Map<string, Thing> {
    for (const link of this.later) link();
    return this.things;
  }

  private fixings(host: Thing, fixings: Fixings, path: Path): void {
    const { kinds } = this.range.data;
    for (const [name, fixing] of Object.entries(fixings)) {
      const full =
        typeof fixing.count === "number" ? fixing.count : (fixing.count[host.position] ?? 0);
      if (full === 0 || !matches(fixing.when, this.car.fitted)) continue;
      const kind = kinds[fixing.kind];
      const thing = this.child("fixing", host, name, kind?.name ?? fixing.kind, [...path, name]);
      const found = this.car.fixing(name, host.position, full);
      const gone = { present: 0, extra: 0, sound: 0 };
      const here = host.absent === undefined ? found : { ...found, ...gone };
      thing.fixing = fixingFacts(fixing, kind, full, here, kinds[found.as ?? ""]);
    }
  }

  private joins(host: Thing, joins: Joins, path: Path, hook = false): void {
    for (const [name, join] of Object.entries(joins)) {
      if (!matches(join.when, this.car.fitted)) continue;
      const thing = this.child("join", host, name, join.name, [...path, name]);
      if (join.supply !== undefined) thing.supply = join.supply;
      if (join.untested !== undefined || hook) thing.untested = join.untested ?? "a hook";
    }
  }

  private child(is: Thing["is"], host: Thing, name: string, words: string, path: Path): Thing {
    const { position, zone } = host;
    const thing = blankThing({ is, name, words, position, zone, origin: { ...host.origin, path } });
    thing.host = host.key;
    this.things.set(thing.key, thing);
    host.holders.push(thing.key);
    return thing;
  }

  private keys(names: readonly string[] | undefined, position: string): string[] {
    return (names ?? []).flatMap((name) => referTo(this.things, name, position, this.car));
  }
}

type Kind = RangeFile["kinds"][string] | undefined;

/** What the range and the car say of one fixing. */
export function fixingFacts(
  fixing: Fixings[string],
  kind: Kind,
  full: number,
  { present, extra, sound, note }: FoundFixing,
  instead: Kind,
): FixingFacts {
  return {
    kind: fixing.kind,
    ...kindFacts(kind, fixing.kind),
    full,
    present,
    extra,
    sound,
    oneUse: fixing["one-use"] ?? kind?.["one-use"] ?? false,
    where: fixing.where,
    ...(fixing.torque === undefined ? {} : { torque: fixing.torque }),
    ...(note === undefined ? {} : { note }),
    ...(instead ? { instead: insteadOf(instead) } : {}),
  };
}

/** What a kind of fastener says of every fixing of its kind. */
function kindFacts(kind: Kind, name: string) {
  const { tool, "tool-in": toolsIn } = kind ?? {};
  return {
    kindName: kind?.name ?? name,
    kindPlural: kind?.plural ?? name,
    size: kind?.size ?? "",
    ...(tool === undefined ? {} : { tool }),
    ...(toolsIn === undefined ? {} : { toolsIn }),
  };
}

function insteadOf({ name, plural, size = "", tool, out = "undo" }: NonNullable<Kind>): Instead {
  return { name, plural, size, verb: out, ...(tool === undefined ? {} : { tool }) };
}

/**
 * The keys that a name means, seen from a position: the same side where both have sides, the one there is
 * where it has none, and all of them seen from no side.
 */
export function referTo(
  things: ReadonlyMap<string, Thing>,
  ref: string,
  position: string,
  car: CarState,
): string[] {
  const [name = "", at] = ref.split("@");
  const places = at === undefined ? [position] : car.positions(at);
  const here = places.map((place) => keyOf(name, place)).filter((key) => things.has(key));
  if (here.length > 0 || at !== undefined) return here;
  return [...things.values()]
    .filter((thing) => thing.name === name && (position === "" || thing.position === ""))
    .map((thing) => thing.key);
}
