import type { RangeFile } from "../../model/generated/range.js";
import type { Catalog } from "../../model/library.js";
import { namesOf } from "../../model/names.js";
import type { Path } from "../../model/source.js";
import { entries, fixingsOf, joinsOf, placesOf } from "../inventory.js";
import { type Reference, type Rule, lookUp } from "../rule.js";

/** A range names only what it or a catalog declares. */
export const rangeNames: Rule = {
  whole: true,
  run: ({ ranges, catalog }, report) => {
    for (const { data, source } of ranges)
      lookUp(
        source,
        [...headNames(data, catalog), ...partNames(data), ...otherNames(data), ...heldNames(data)],
        report,
      );
  },
};

function headNames({ steering, options, kinds }: RangeFile, { tools }: Catalog): Reference[] {
  const steered = optional(steering, ["steering"], options, "This range has no option");
  const defaults = entries(options, ["options"]).flatMap(({ value, path }) =>
    optional(value.default, [...path, "default"], value.values, "This option has no value"),
  );
  const lacks = "No catalog holds the tool";
  const used = entries(kinds, ["kinds"]).flatMap(({ value, path }) => [
    ...optional(value.tool, [...path, "tool"], tools, lacks),
    ...list(value["tool-in"], [...path, "tool-in"], Object.keys(tools), lacks),
  ]);
  return [...steered, ...defaults, ...used];
}

function partNames(range: RangeFile): Reference[] {
  const names = namesOf(range);
  return entries(range.parts, ["parts"]).flatMap(({ value, path }) => {
    const holders = [value["held-by"], value.plugs, value.hooks].flatMap((map) =>
      Object.keys(map ?? {}),
    );
    return [
      ...list(value.hides, [...path, "hides"], names, "Nothing in this range is called"),
      ...list(
        value["welded-by"],
        [...path, "welded-by"],
        Object.keys(range.joints ?? {}),
        "This range has no joint",
      ),
      ...list(
        value["eased-by"],
        [...path, "eased-by"],
        holders,
        "This part has no fixing, plug or hook",
      ),
    ];
  });
}

function otherNames(range: RangeFile): Reference[] {
  const { zones, supplies } = range;
  const joins = joinsOf(range).map((join) => join.name);
  const zoned = (["parts", "surfaces", "joints"] as const).flatMap((key) =>
    entries<{ zone: string }>(range[key], [key]).flatMap(({ value, path }) =>
      optional(value.zone, [...path, "zone"], zones, "This range has no zone"),
    ),
  );
  const tried = entries(range.functions, ["functions"]).flatMap(({ value, path }) => [
    ...list(value.proves, [...path, "proves"], joins, "This range has no plug or hook"),
    ...optional(value.supply, [...path, "supply"], supplies, "This range has no supply"),
  ]);
  return [...zoned, ...tried];
}

function heldNames(range: RangeFile): Reference[] {
  const { kinds, supplies } = range;
  const supplied = joinsOf(range).flatMap(({ value, path }) =>
    optional(value.supply, [...path, "supply"], supplies, "This range has no supply"),
  );
  const fixed = fixingsOf(range).flatMap(({ value, path, at }) => [
    ...optional(value.kind, [...path, "kind"], kinds, "This range has no kind of fixing"),
    ...(typeof value.count === "number"
      ? []
      : Object.keys(value.count).map((place) => ({
          name: place,
          path: [...path, "count", place],
          known: placesOf(at),
          lacks: "This part is not found at",
        }))),
  ]);
  return [...supplied, ...fixed];
}

function optional(
  name: string | undefined,
  path: Path,
  map: object | undefined,
  lacks: string,
): Reference[] {
  return name === undefined ? [] : [{ name, path, known: Object.keys(map ?? {}), lacks }];
}

function list(
  names: readonly string[] | undefined,
  path: Path,
  known: readonly string[],
  lacks: string,
): Reference[] {
  return (names ?? []).map((name, i) => ({
    name: name.split("@")[0] ?? "",
    path: [...path, i],
    known,
    lacks,
  }));
}
