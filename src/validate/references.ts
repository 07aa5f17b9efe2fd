import type { Path } from "../model/source.js";
import type { Reference } from "./rule.js";
import type { Known } from "./scope.js";

/** A name with or without a side: 'seat', 'seat@left'. */
export function target(known: Known, text: string, path: Path, names = known.all): Reference[] {
  const [name = "", at] = text.split("@");
  const lacks = "Nothing in this range is called";
  return [{ name, path, known: names, lacks }, ...position(known, at, path)];
}

/** A place on the car, where one is given. */
export function position(known: Known, name: string | undefined, path: Path): Reference[] {
  if (name === undefined) return [];
  return [{ name, path, known: known.positions, lacks: "This range has no position" }];
}

/** A name and the state it must have: 'floor wiped'. */
export function stateNeed(known: Known, text: string, path: Path): Reference[] {
  const [name = "", wanted = ""] = text.split(" ");
  const lacks = "No verb and no setting gives the state";
  return [...target(known, name, path), { name: wanted, path, known: known.states, lacks }];
}
