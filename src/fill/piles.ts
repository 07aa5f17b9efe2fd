import type { Step } from "../model/plan.js";
import { effectOf } from "../model/verbs.js";

/** A part that comes off, or both of a pair that lie alike, in the order in which they come off. */
export type Layer = readonly [Step, ...Step[]];

/** Layers that lie on the same thing with nothing on them, or one layer with all that lies on it. */
export interface Pile {
  layers: readonly Layer[];
  over: readonly Pile[];
  /** What lies on it too, but is drawn on another pile. */
  again: readonly Layer[];
}

/** The job's own pile, and all that comes off without lying on it. */
export interface Piles {
  goal: Pile;
  beside: readonly Pile[];
}

/** Parts that are taken off or laid aside, and the one that is cut out. */
export function comesOff({ phase, verb }: Step): boolean {
  const effect = effectOf(verb) ?? "";
  return (phase === "strip" && ["off", "ease"].includes(effect)) || effect === "cut-off";
}

/**
 * Piles up what comes off: each layer once, on the deepest thing that it hides. Piles stand in the order of the
 * zones; layers with nothing on them are one pile where their zones are no farther apart than `reach`.
 */
export function pilesOf(
  steps: readonly Step[],
  zones: readonly string[],
  reach: number,
): Piles | undefined {
  const layers = layersOf(steps.filter(comesOff));
  const below = belowOf(layers);
  const goal = goalOf(layers, below);
  if (!goal) return undefined;
  const under = (layer: Layer): Layer[] => nextBelow(layer, below);
  const baseOf = (layer: Layer): Layer | undefined =>
    under(layer).sort((a, b) => weight(b, goal, below) - weight(a, goal, below))[0];
  const pile = (layer: Layer): Pile => ({
    layers: [layer],
    over: side(layers.filter((one) => baseOf(one) === layer)),
    again: layers.filter((one) => baseOf(one) !== layer && under(one).includes(layer)),
  });
  const side = (standing: readonly Layer[], far = reach): Pile[] =>
    together(standing.map(pile), zones, far);
  const roots = layers.filter((layer) => layer !== goal && under(layer).length === 0);
  return { goal: pile(goal), beside: side(roots, 0) };
}

/** The key of the part that a step takes off. */
function partKey({ touches }: Step): string {
  return touches[0] ?? "";
}

/** Both of a pair are one layer where the same parts lie over and under each. */
function layersOf(parts: readonly Step[]): Layer[] {
  const named = (steps: readonly Step[]): string =>
    [...new Set(steps.map(({ part }) => part))].sort().join(" ");
  const groups = new Map<string, [Step, ...Step[]]>();
  for (const step of parts) {
    const over = named(parts.filter(({ hides }) => hides.includes(partKey(step))));
    const under = named(parts.filter((one) => step.hides.includes(partKey(one))));
    const alike = [step.part, over, under].join("|");
    const known = groups.get(alike);
    if (known) known.push(step);
    else groups.set(alike, [step]);
  }
  return [...groups.values()];
}

type Below = ReadonlyMap<Layer, ReadonlySet<Layer>>;

/** All that must stay until a layer is off, however deep. */
function belowOf(layers: readonly Layer[]): Below {
  const known = new Map<Layer, Set<Layer>>();
  const of = (layer: Layer): Set<Layer> => {
    const found = known.get(layer) ?? new Set<Layer>();
    if (known.has(layer)) return found;
    known.set(layer, found);
    for (const one of layers.filter((other) => hides(layer, other)))
      for (const deep of [one, ...of(one)]) found.add(deep);
    return found;
  };
  layers.forEach(of);
  return known;
}

function hides(layer: Layer, other: Layer): boolean {
  return layer.some((step) => other.some((one) => step.hides.includes(partKey(one))));
}

/** What a layer lies on with nothing between. */
function nextBelow(layer: Layer, below: Below): Layer[] {
  const all = [...(below.get(layer) ?? [])];
  return all.filter((one) => !all.some((between) => below.get(between)?.has(one)));
}

/** The panel that is cut out, or else what most lies on. */
function goalOf(layers: readonly Layer[], below: Below): Layer | undefined {
  const cut = layers.find(([step]) => effectOf(step.verb) === "cut-off");
  const covers = (layer: Layer): number =>
    [...below.values()].filter((deep) => deep.has(layer)).length;
  return cut ?? [...layers].sort((a, b) => covers(b) - covers(a))[0];
}

/** What leads to the goal comes first, and of that the deepest pile. */
function weight(layer: Layer, goal: Layer, below: Below): number {
  const deep = below.get(layer);
  const leads = layer === goal || deep?.has(goal);
  return (deep?.size ?? 0) + (leads ? below.size : 0);
}

function together(piles: readonly Pile[], zones: readonly string[], reach: number): Pile[] {
  const place = ({ layers: [layer] }: Pile): number => (layer ? zones.indexOf(layer[0].zone) : 0);
  const bare = ({ over, again }: Pile): boolean => over.length === 0 && again.length === 0;
  const joined: Pile[] = [];
  for (const pile of [...piles].sort((a, b) => place(a) - place(b))) {
    const near = joined.findIndex(
      (one) => bare(one) && bare(pile) && place(pile) - place(one) <= reach,
    );
    const into = joined[near];
    if (into) joined[near] = { ...into, layers: [...into.layers, ...pile.layers] };
    else joined.push(pile);
  }
  return joined;
}
