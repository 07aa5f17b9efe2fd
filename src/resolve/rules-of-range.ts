import { minutesOf } from "../figures/minutes.js";
import type { RangeFile } from "../model/generated/range.js";
import type { Filed } from "../model/library.js";
import type { StateNeed, Thing, World } from "../model/world.js";
import type { CarState } from "./car-state.js";
import { referTo } from "./things.js";

/** What the range asks for before hot work and while a structural joint is open. */
export function rulesOfRange(
  range: Filed<RangeFile>,
  things: ReadonlyMap<string, Thing>,
  car: CarState,
): Pick<World, "hot" | "structural"> {
  const { "hot-work": hot, structural } = range.data;
  const needs = (section: string, texts: readonly string[]): StateNeed[] =>
    texts.flatMap((text, i) => {
      const [name = "", state = ""] = text.split(" ");
      const origin = { file: range.source.file, path: [section, "needs", i] };
      return referTo(things, name, "", car).map((key) => ({ key, state, origin }));
    });
  const keys = (names: readonly string[]): string[] =>
    names.flatMap((name) => referTo(things, name, "", car));
  return {
    ...(hot
      ? { hot: { needs: needs("hot-work", hot.needs), watch: minutesOf(hot.watch) ?? Infinity } }
      : {}),
    ...(structural
      ? {
          structural: {
            needs: needs("structural", structural.needs),
            compare: keys(structural.compare),
          },
        }
      : {}),
  };
}
