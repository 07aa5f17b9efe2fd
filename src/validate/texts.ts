import type { Path } from "../model/source.js";
import type { Placed } from "../model/recipe-steps.js";

/** A sentence that a step prints, and where it stands. */
export interface PlacedText {
  text: string;
  path: Path;
}

/** The sentences of a step in which figures may be named. */
export function textsOf({ step, path }: Placed): PlacedText[] {
  const one = (["say", "back", "accept", "note"] as const).flatMap((key) => {
    const text = step[key];
    return text === undefined ? [] : [{ text, path: [...path, key] }];
  });
  const checks = (step.checks ?? []).map((text, i) => ({ text, path: [...path, "checks", i] }));
  return [...one, ...checks];
}

/** The facts of a step that are written out as text. */
export function factsOf({ step, path }: Placed): PlacedText[] {
  return (step.facts ?? []).flatMap(({ value }, i) =>
    value === undefined ? [] : [{ text: value, path: [...path, "facts", i, "value"] }],
  );
}
