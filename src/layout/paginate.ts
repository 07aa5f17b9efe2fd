import type { Page } from "../model/page.js";
import { moved } from "./block.js";
import type { Box } from "./box.js";
import type { Laid } from "./lines.js";
import type { Slab } from "./slabs.js";

/** The frame into which pages are filled. */
export interface Frame {
  x: number;
  y: number;
  height: number;
  /** The mark at the top of a page on which a part of the sheet goes on. */
  resume(within: Box): Laid;
  /** The mark at the foot of a page after which it goes on. */
  goesOn(within: Box, page: number): Laid;
}

/** Fills pages with slabs in order; what must stay together goes to the next page together. */
export function paginate(slabs: readonly Slab[], frame: Frame): Page[] {
  const filling = new Filling(frame);
  for (const chain of chainsOf(slabs)) filling.chain(chain);
  return filling.pages;
}

class Filling {
  readonly pages: Page[] = [{ items: [], headings: [] }];
  private readonly begun = new Set<Box | Laid>();
  private readonly frame: Frame;
  private y = 0;
  private margin = 0;

  constructor(frame: Frame) {
    this.frame = frame;
  }

  /** One that no page can hold is cut before its table, where it has one. */
  chain(chain: readonly Slab[]): void {
    const [first] = chain;
    const table = chain.findIndex(({ isHead }) => isHead);
    if (table > 0 && heightOf(chain, 0) > this.frame.height) {
      this.chain(chain.slice(0, table));
      this.chain(chain.slice(table));
      return;
    }
    const full = !this.fits(heightOf(chain, this.margin));
    if (first && this.y > 0 && (first.newPage || full)) this.turn(first);
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
    this.pages.at(-1)?.items.push(...moved(laid.items, this.frame.x + x, this.frame.y + this.y));
    this.y += laid.height;
  }

  /** Turns to a new page, and says on both that a part of the sheet goes on. */
  private turn(slab: Slab): void {
    const within = slab.within.filter((box) => this.begun.has(box)).at(-1);
    if (within) {
      const mark = this.frame.goesOn(within, this.pages.length + 1);
      this.pages.at(-1)?.items.push(...foot(mark, this.frame));
    }
    this.pages.push({ items: [], headings: [] });
    [this.y, this.margin] = [0, 0];
    if (within) this.place(this.frame.resume(within), 0);
    if (slab.head && this.begun.has(slab.head)) this.place(slab.head, slab.x);
  }
}

function foot(mark: Laid, frame: Frame): Page["items"] {
  return moved(mark.items, frame.x, frame.y + frame.height);
}

/** Slabs that stay together. */
function chainsOf(slabs: readonly Slab[]): Slab[][] {
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

function heightOf(chain: readonly Slab[], before: number): number {
  let [height, margin] = [0, before];
  for (const slab of chain) {
    height += Math.max(margin, slab.top) + slab.laid.height;
    margin = slab.bottom;
  }
  return height;
}
