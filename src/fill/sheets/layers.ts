import type { Brief } from "../../model/plan.js";
import { putsOn } from "../../model/verbs.js";
import { type Words, fillIn } from "../../model/words.js";
import { type Layer, type Pile, type Piles, comesOff, pilesOf } from "../piles.js";
import { type Sheet, type SheetInput, headOf, sum } from "../sheet.js";

/** One page that draws what lies over what, seen from the side: outermost on top, the panel at the bottom. */
export const layers: Sheet = {
  name: "layers",
  applies: ({ steps }) => steps.filter(comesOff).length > 1,
  view: (input, words) => ({ ...headOf(input), ...drawingOf(input, words) }),
};

/** The zone of what is reached from below, which is drawn below the panel. */
const fromBelow = "under";

/** No slab is narrower than so many letters, and so many are sure to fit across the sheet. */
const narrowest = 8;
const across = 78;

/** A pile as it is drawn: how wide, and what stands in its slab. */
interface Drawn {
  zone: string;
  parts: { name: string; steps: string[] }[];
  /** What lies on it but is drawn on another pile, and how many letters wide that is. */
  again: string;
  elsewhere: number;
  over: Drawn[];
  /** The shares of the width that the piles on it take. */
  tracks: string;
  /** How many letters wide it must be. */
  letters: number;
  /** Each of its parts stands on one line. */
  wide: boolean;
  /** It lies on nothing that comes off. */
  root: boolean;
  /** It is what the job is for. */
  panel: boolean;
  /** It hides from below what stands above it. */
  hung: boolean;
}

/** How a pile is drawn: `broken` sets a side and its steps on lines of their own. */
interface Drawing {
  input: SheetInput;
  words: Words;
  broken: boolean;
}

/** The ways to draw, the clearest first: how far bare layers are put together, and how lines are broken. */
const ways = [
  { reach: 0, broken: false },
  { reach: 1, broken: false },
  { reach: 1, broken: true },
  { reach: Infinity, broken: true },
];

/** The first way that fits across the sheet. */
function drawingOf(input: SheetInput, words: Words): object {
  const zones = Object.keys(input.brief.zones);
  const all = ways.flatMap(({ reach, broken }) => {
    const piles = pilesOf(input.steps, zones, reach);
    return piles ? [{ drawing: { input, words, broken }, piles }] : [];
  });
  const fits = ({ piles, drawing }: (typeof all)[0]): boolean =>
    drawn(piles.goal, drawing).letters <= across;
  const best = all.find(fits) ?? all.at(-1);
  return best ? sheetOf(best.piles, best.drawing) : {};
}

function sheetOf(piles: Piles, drawing: Drawing): object {
  const whole = { ...drawing, broken: false };
  const goal = { ...drawn(piles.goal, drawing), root: true, panel: true };
  const beside = piles.beside.map((pile) => ({ ...drawn(pile, whole), root: true }));
  return {
    goal: widened(goal, across),
    dashed: [goal, ...beside].some(hasAgain),
    hung: row(beside.filter(({ hung }) => hung)),
    beside: row(beside.filter(({ hung }) => !hung)),
    said: [piles.goal, ...piles.beside].flatMap((pile) => told(pile, whole)).join(" "),
  };
}

/** Whether a part is drawn a second time. */
function hasAgain({ again, over }: Drawn): boolean {
  return again !== "" || over.some(hasAgain);
}

/** Piles side by side across the sheet, and their shares of the width. */
function row(piles: readonly Drawn[]): { piles: Drawn[]; tracks: string } {
  return { piles: shared(piles, across), tracks: tracksOf(piles) };
}

function tracksOf(piles: readonly Drawn[]): string {
  return piles.map(({ letters }) => `${letters}fr`).join(" ");
}

/** Shares so many letters of room among piles. */
function shared(piles: readonly Drawn[], room: number, elsewhere = 0): Drawn[] {
  const total = sum(piles.map(({ letters }) => letters)) + elsewhere;
  return piles.map((pile) => widened(pile, (room * pile.letters) / total));
}

function widened(pile: Drawn, room: number): Drawn {
  const lines = pile.parts.map(({ name, steps }) => [name, ...steps].join(" ").length);
  const over = shared(pile.over, room, pile.elsewhere);
  return { ...pile, over, wide: Math.max(...lines) <= room };
}

function drawn(pile: Pile, drawing: Drawing): Drawn {
  const { brief } = drawing.input;
  const parts = pile.layers.map((layer) => partOf(layer, drawing));
  const over = pile.over.map((one) => drawn(one, drawing));
  const again = pile.again.map((layer) => nameOf(layer, brief)).join(", ");
  const elsewhere = again === "" ? 0 : longest(again.split(" "));
  const own = longest(parts.flatMap(({ name, steps }) => [...name.split(" "), ...steps]));
  const zones = [...new Set(pile.layers.map(([{ zone }]) => zone))];
  return {
    zone: zones.map((zone) => brief.zones[zone] ?? zone).join(", "),
    parts,
    again,
    elsewhere,
    over,
    tracks: `${tracksOf(over)}${again === "" ? "" : ` ${elsewhere}fr`}`.trim(),
    letters: Math.max(own, sum(over.map(({ letters }) => letters)) + elsewhere),
    wide: false,
    root: false,
    panel: false,
    hung: zones.includes(fromBelow),
  };
}

function longest(texts: readonly string[]): number {
  return Math.max(narrowest, ...texts.map(({ length }) => length));
}

/** The name as the range calls it, and for each side the step out and the step back. */
function partOf(layer: Layer, { input, words, broken }: Drawing): Drawn["parts"][0] {
  const { steps, brief } = input;
  const each = layer.flatMap((step) => {
    const back = steps.findLast((one) => putsOn(one) && one.touches[0] === step.touches[0]);
    const numbers = back ? `${step.n}/${back.n}` : step.n;
    if (step.position === "") return [numbers];
    const side = words.sides[step.position] ?? step.position;
    return broken ? [side, numbers] : [`${side} ${numbers}`];
  });
  return { name: nameOf(layer, brief), steps: each };
}

function nameOf([{ part = "", title }]: Layer, brief: Brief): string {
  return brief.parts[part] ?? title;
}

/** The drawing in words: each part with its steps, after all that lies on it. */
function told(pile: Pile, drawing: Drawing): string[] {
  const { input, words } = drawing;
  const names = (layers: readonly Layer[]): string =>
    layers.map((layer) => nameOf(layer, input.brief)).join(", ");
  const on = names([...pile.over.flatMap((one) => one.layers), ...pile.again]);
  const parts = pile.layers.map((layer) => {
    const { name, steps } = partOf(layer, drawing);
    return `${name} ${steps.join(", ")}`;
  });
  const phrase = words.phrases[on === "" ? "layer-free" : "layer-under"] ?? "";
  const own = fillIn(phrase, { part: parts.join("; "), over: on });
  return [...pile.over.flatMap((one) => told(one, drawing)), own];
}
