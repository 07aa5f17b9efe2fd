import type { Page } from "../model/page.js";
import type { Box } from "./box.js";
import { type Laid, type Placed, itemsOf } from "./lines.js";
import type { Slab } from "./slabs.js";

/** The frame into which pages are filled. */
export interface Frame {
  x: number;
  y: number;
  height: number;
  /** The mark at the top of a page on which a part of the sheet goes on, with what still holds there. */
  resume(within: Box, still: string): Laid;
  /** The mark at the foot of a page after which it goes on. */
  goesOn(within: Box, page: number): Laid;
}

/** Of a page's height: one that is filled less takes over what ends the page before. */
const sparse = 0.45;

/** Fills pages with slabs in order; what must stay together goes to the next page together. */
export function paginate(slabs: readonly Slab[], frame: Frame): Page[] {
  const chains = chainsOf(slabs);
  const early = new Set<Chain>();
  const tried = new Set<Chain>();
  for (;;) {
    const filling = new Filling(frame, early);
    for (const chain of chains) filling.chain(chain);
    const moved = lastBeforeSparse(filling.filled, chains, frame.height, tried);
    if (!moved) return filling.pages.map(painted);
    early.delete(moved.after);
    early.add(moved.chain);
    tried.add(moved.chain);
  }
}

type Chain = readonly Slab[];

/** How far a page is filled, and the chain with which it begins. */
interface Filled {
  height: number;
  first: Chain | undefined;
}

/** The last chain of the page before a sparse one, where both pages are the better for its move. */
function lastBeforeSparse(
  filled: readonly Filled[],
  chains: readonly Chain[],
  height: number,
  tried: ReadonlySet<Chain>,
): { chain: Chain; after: Chain } | undefined {
  const low = sparse * height;
  for (const [i, { height: own, first: after }] of filled.entries()) {
    const before = filled[i - 1];
    const chain = after && chains[chains.indexOf(after) - 1];
    if (!before || !chain || chain === before.first || tried.has(chain)) continue;
    if (after[0]?.newPage) continue;
    const more = heightOf([...chain, ...after], 0) - heightOf(after, 0);
    if (own < low && before.height - more >= low && own + more <= height) return { chain, after };
  }
  return undefined;
}

/** A page that is being filled: what stands on it, and where. */
interface Standing {
  placed: Placed[];
  headings: Page["headings"];
}

function painted({ placed, headings }: Standing): Page {
  return { items: placed.flatMap(itemsOf), headings };
}

class Filling {
  readonly pages: Standing[] = [{ placed: [], headings: [] }];
  readonly filled: Filled[] = [{ height: 0, first: undefined }];
  private readonly begun = new Set<Box | Laid>();
  private readonly frame: Frame;
  private readonly early: ReadonlySet<Chain>;
  private y = 0;
  private margin = 0;

  /** Some chains begin a page though the page before has room. */
  constructor(frame: Frame, early: ReadonlySet<Chain>) {
    this.frame = frame;
    this.early = early;
  }

  /** One that no page can hold is cut before its table, where it has one. */
  chain(chain: Chain): void {
    const [first] = chain;
    const table = chain.findIndex(({ isHead }) => isHead);
    if (table > 0 && heightOf(chain, 0) > this.frame.height) {
      this.chain(chain.slice(0, table));
      this.chain(chain.slice(table));
      return;
    }
    const full = !this.fits(heightOf(chain, this.margin));
    if (first && this.y > 0 && (first.newPage || full || this.early.has(chain)))
      this.turn(first, chain);
    for (const slab of chain) this.add(slab);
  }

  private add(slab: Slab): void {
    if (this.y > 0 && !this.fits(slab.laid.height)) this.turn(slab);
    if (this.y > 0) this.y += Math.max(this.margin, slab.top);
    const y = this.frame.y + this.y;
    this.pages.at(-1)?.headings.push(...slab.headings.map((one) => ({ ...one, y })));
    this.place(slab.laid, slab.x);
    this.margin = slab.bottom;
    for (const box of slab.within) this.begun.add(box);
    if (slab.head) this.begun.add(slab.head);
  }

  private fits(height: number): boolean {
    return this.y + height <= this.frame.height + 0.01;
  }

  private place(laid: Laid, x: number): void {
    this.pages.at(-1)?.placed.push({ laid, x: this.frame.x + x, y: this.frame.y + this.y });
    this.y += laid.height;
    const page = this.filled.at(-1);
    if (page) page.height = this.y;
  }

  /** Turns to a new page, and says on both that a part of the sheet goes on. */
  private turn(slab: Slab, first?: Chain): void {
    const within = slab.within.filter((box) => this.begun.has(box)).at(-1);
    if (within) {
      const laid = this.frame.goesOn(within, this.pages.length + 1);
      const { x, y, height } = this.frame;
      this.pages.at(-1)?.placed.push({ laid, x, y: y + height });
    }
    this.pages.push({ placed: [], headings: [] });
    this.filled.push({ height: 0, first });
    [this.y, this.margin] = [0, 0];
    if (within) this.place(this.frame.resume(within, slab.still ?? ""), 0);
    if (slab.head && this.begun.has(slab.head)) this.place(slab.head, slab.x);
  }
}

/** Slabs that stay together. */
function chainsOf(slabs: readonly Slab[]): Chain[] {
  const chains: Slab[][] = [];
  let open = false;
  for (const slab of slabs) {
    const last = chains.at(-1);
    if (last && (open || slab.keepPrevious) && !slab.newPage) last.push(slab);
    else chains.push([slab]);
    open = slab.keepNext;
  }
  return chains;
}

function heightOf(chain: Chain, before: number): number {
  let [height, margin] = [0, before];
  for (const slab of chain) {
    height += Math.max(margin, slab.top) + slab.laid.height;
    margin = slab.bottom;
  }
  return height;
}
