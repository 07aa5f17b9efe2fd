import type { RangeFile } from "../../src/model/generated/range.js";

/** What a range's own text says of its things, turned about so that a test can ask it of a pair of steps. */
export interface Declared {
  /** Fixing, plug or hook: the part or surface that it holds or closes. */
  host: Map<string, string>;
  /** Fixings and plugs that must be out before their part is eased. */
  easing: Set<string>;
  hides: Map<string, ReadonlySet<string>>;
  weldedBy: Map<string, ReadonlySet<string>>;
  /** Plug or function: the supply it carries or needs. */
  supply: Map<string, string>;
  /** Function: the plugs it proves. */
  proves: Map<string, ReadonlySet<string>>;
}

/** Reads the range's text, name by name. */
export function declaredOf(range: RangeFile): Declared {
  const parts = Object.entries(range.parts);
  const joins = parts.flatMap(([part, one]) =>
    [...Object.entries(one.plugs ?? {}), ...Object.entries(one.hooks ?? {})].map(
      ([name, join]) => [part, name, join.supply] as const,
    ),
  );
  const fixings = parts.flatMap(([part, one]) =>
    Object.keys(one["held-by"] ?? {}).map((name) => [name, part] as const),
  );
  const closing = Object.entries(range.surfaces ?? {}).flatMap(([surface, one]) =>
    Object.keys(one["closed-by"] ?? {}).map((name) => [name, surface] as const),
  );
  const functions = Object.entries(range.functions ?? {});
  const supplied = [
    ...joins.map(([, name, supply]) => [name, supply] as const),
    ...functions.map(([name, one]) => [name, one.supply] as const),
  ];
  return {
    host: new Map([...fixings, ...closing, ...joins.map(([part, name]) => [name, part] as const)]),
    easing: new Set(parts.flatMap(([, one]) => one["eased-by"] ?? [])),
    hides: new Map(parts.map(([name, one]) => [name, new Set(one.hides)])),
    weldedBy: new Map(parts.map(([name, one]) => [name, new Set(one["welded-by"])])),
    supply: new Map(
      supplied.flatMap(([name, supply]) => (supply === undefined ? [] : [[name, supply]])),
    ),
    proves: new Map(functions.map(([name, one]) => [name, new Set(one.proves)])),
  };
}
