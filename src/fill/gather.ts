import { markOf } from "../figures/format.js";
import type { Brief, Step } from "../model/plan.js";
import type { Words } from "../model/words.js";
import { bagsOf } from "./bags.js";
import { joinsOf } from "./count-lines.js";
import { allMessages } from "./messages.js";
import { sum } from "./sheet.js";
import { firstStep, sizesOf, toolKinds } from "./tool-lines.js";
import { wornFor } from "./wear.js";

/** A line of a list of what to bring. */
export interface GatherItem {
  name: string;
  count?: number;
  amount?: number;
  unit?: string;
  /** Where the amount comes from. */
  mark?: string;
  /** What it must fit, drill, read or reach. */
  sizes?: string[];
  /** From which step it is needed. */
  from?: string;
  /** Whether the plan does not know how much of it, or of a part of it, and that is written in. */
  ask?: boolean;
  more: string;
}

/** Tools for one kind of work. */
export interface ToolGroup {
  title: string;
  items: GatherItem[];
}

/** The lists of what to bring. */
export interface GatherView {
  tools: ToolGroup[];
  supplies: GatherItem[];
  spares: GatherItem[];
  fixings: GatherItem[];
  renew: GatherItem[];
  wear: GatherItem[];
  /** How many bags with their labels, and how many pairs of tags: one for each end of what is parted. */
  bags: number;
  pairs: number;
}

/** Gathers what to bring for a plan. */
export function gatherOf(brief: Brief, steps: readonly Step[], words: Words): GatherView {
  return {
    tools: toolGroups(brief, steps, words),
    supplies: brief.consumables.map((supply) => supplyOf(supply, steps, words)),
    spares: brief.spares.map(({ note = "", ...one }) => ({ ...one, more: note })),
    fixings: newFixings(steps, words),
    bags: bagsOf(steps).size,
    pairs: sum(steps.map((step) => (step.phase === "strip" ? joinsOf(step) : 0))),
    renew: brief.renew.map(({ name, why }) => ({ name, ask: true, more: why })),
    wear: wornFor(allMessages({ brief, steps })).map(({ name }) => ({ name, more: "" })),
  };
}

/** A supply from the first step that uses it; its amount is asked for where a step that uses it gives none. */
function supplyOf(
  { note = "", amount, source, ...one }: Brief["consumables"][number],
  steps: readonly Step[],
  words: Words,
): GatherItem {
  const usesIn = (step: Step): Step["uses"] =>
    step.uses.filter(({ consumable }) => consumable === one.id);
  const mine = steps.filter((step) => usesIn(step).length > 0);
  return {
    ...one,
    mark: source ? markOf(source) : "",
    ...(amount === undefined ? {} : { amount: enough(amount) }),
    ask: amount === undefined || mine.flatMap(usesIn).some((use) => use.amount === undefined),
    from: firstStep(mine, words),
    more: note,
  };
}

/** The tools of a plan by the kind of work they are for, each from the step that first asks for it. */
function toolGroups(brief: Brief, steps: readonly Step[], words: Words): ToolGroup[] {
  const { or = "or" } = words.phrases;
  const all = brief.tools.map((tool) => {
    const { id, kind, name, instead, why = "" } = tool;
    const mine = steps.filter(({ tools }) => tools.includes(id));
    const item: GatherItem = {
      name,
      sizes: sizesOf(tool, mine, words),
      from: firstStep(mine, words),
      more: `${instead === undefined ? "" : `${or} ${instead}. `}${why}`.trim(),
    };
    return { kind, at: mine[0] ? steps.indexOf(mine[0]) : -1, item };
  });
  return toolKinds.flatMap((kind) => {
    const mine = all.filter((one) => one.kind === kind).sort((a, b) => a.at - b.at);
    const title = words.phrases[`tools-${kind}`] ?? kind;
    return mine.length > 0 ? [{ title, items: mine.map(({ item }) => item) }] : [];
  });
}

/** An amount to bring, rounded up to two digits: what is worked out to the hundredth is not weighed so. */
function enough(amount: number): number {
  const step = 10 ** (Math.floor(Math.log10(amount)) - 1);
  return Number((Math.ceil(amount / step - 1e-9) * step).toPrecision(2));
}

/** New fixings that the refit asks for, used once or missing when the car came in; alike ones together. */
function newFixings(steps: readonly Step[], { phrases, sides }: Words): GatherItem[] {
  const items = new Map<
    string,
    { count: number; names: [string, string]; places: Set<string>; why: string }
  >();
  for (const step of steps) {
    for (const { fresh, name, plural, size, place, oneUse } of step.fixings) {
      if (fresh === 0) continue;
      const why = phrases[oneUse ? "used-once" : "missing-here"] ?? "";
      const key = `${name} ${size} ${why} ${step.title}`;
      const item = items.get(key) ?? {
        count: 0,
        names: [sized(name, size), sized(plural, size)],
        places: new Set([step.title]),
        why,
      };
      item.count += fresh;
      if (place !== "") item.places.add(sides[place] ?? place);
      items.set(key, item);
    }
  }
  return [...items.values()].map(({ count, names, places, why }) => ({
    count,
    name: names[count === 1 ? 0 : 1],
    more: `${[...places].join(", ")}: ${why}`,
  }));
}

function sized(name: string, size: string): string {
  return [name, size].join(" ").trim();
}
