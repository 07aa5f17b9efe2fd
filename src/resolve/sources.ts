import { markOf } from "../figures/format.js";
import type { FigureSource } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import { capital } from "./sentence.js";

/** Where the figures of these steps come from, each source once, in the order in which they are met. */
export function sourcesOf(steps: readonly Step[]): { mark: string; words: string }[] {
  const all = steps.flatMap((step) => [
    ...step.figures.map((figure) => figure.source),
    ...[...step.facts, ...step.readings, ...(step.hold?.readings ?? [])].flatMap(
      ({ figure }) => figure?.source ?? [],
    ),
    ...[step.waitSource ?? []].flat(),
    ...step.uses.flatMap(({ source }) => source ?? []),
    ...step.fixings.flatMap(({ torque }) => torque?.source ?? []),
  ]);
  const named = all.flatMap((source) => {
    const words = wordsOf(source);
    return words === undefined ? [] : [{ mark: markOf(source), words }];
  });
  const once = new Map(named.map((one) => [`${one.mark} ${one.words}`, one]));
  return [...once.values()].sort((a, b) => (a.mark < b.mark ? -1 : a.mark > b.mark ? 1 : 0));
}

/** Sources that say more than their mark does. */
function wordsOf(source: FigureSource): string | undefined {
  if (typeof source === "string") return undefined;
  if ("publication" in source)
    return [source.publication, source.section].filter((one) => one !== undefined).join(", ");
  const inputs = Object.entries(source.with).map(([name, value]) => `${name} ${value}`);
  const { figure, about = figure, formula = "", published = "" } = source;
  return `${capital(about)} (${inputs.join(", ")}): ${formula}. ${published}`;
}
