import { markOf } from "../figures/format.js";
import { type ComputedSource, isComputed } from "../model/figure.js";
import type { Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { capital } from "./sentence.js";

interface SourceRow {
  mark: string;
  words: string;
}

/** Where the figures of these steps come from, each source once, in the order in which they are met. */
export function sourcesOf(steps: readonly Step[], language: Words): SourceRow[] {
  const all = steps.flatMap((step) => [
    ...step.figures.map((figure) => figure.source),
    ...[...step.facts, ...step.readings, ...(step.hold?.readings ?? [])].flatMap(
      ({ figure }) => figure?.source ?? [],
    ),
    ...[step.waitSource ?? []].flat(),
    ...step.uses.flatMap(({ source }) => source ?? []),
    ...step.fixings.flatMap(({ torque }) => torque?.source ?? []),
  ]);
  const computed = all.filter(isComputed);
  const rows = all.flatMap((source): SourceRow[] => {
    if (isComputed(source)) {
      const same = computed.filter(({ figure }) => figure === source.figure);
      return [{ mark: markOf(source), words: computedWords(same, source, language) }];
    }
    // Sources that say no more than their mark have no row of their own.
    if (typeof source === "string") return [];
    const words = [source.publication, source.section].filter((one) => one !== undefined);
    return [{ mark: markOf(source), words: words.join(", ") }];
  });
  const once = new Map(rows.map((one) => [`${one.mark} ${one.words}`, one]));
  return [...once.values()].sort((a, b) => (a.mark < b.mark ? -1 : a.mark > b.mark ? 1 : 0));
}

/** What a figure is, from which inputs it was computed here, by which formula, after whom. */
function computedWords(
  all: readonly ComputedSource[],
  { figure, about = figure, formula = "", published = "" }: ComputedSource,
  { figures }: Words,
): string {
  const said = (text: string): string => figures[text] ?? text;
  const names = [...new Set(all.flatMap((source) => Object.keys(source.with)))];
  const inputs = names.map((name) => {
    const given = all.flatMap((source) => source.with[name] ?? []).map((value) => String(value));
    return `${said(name)} ${[...new Set(given)].map(said).join(", ")}`;
  });
  return `${capital(said(about))} (${inputs.join("; ")}): ${said(formula)}. ${said(published)}`;
}
