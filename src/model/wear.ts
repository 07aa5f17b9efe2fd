import type { CatalogFile } from "./generated/catalog.js";
import type { Catalog } from "./library.js";
import type { Message } from "./plan.js";

/** Something that is worn against a hazard. */
export interface Wear {
  id: string;
  name: string;
  /** What it guards. */
  for: NonNullable<CatalogFile["wear"]>[string]["for"];
  /** All that need not be worn beside it, by id, however many catalog entries that takes to follow. */
  also: readonly string[];
}

/** A safety message as a catalog or a recipe writes it. */
export type WrittenMessage = Catalog["messages"][string];

/** A named or written-out safety message, with what it says to wear looked up. */
export function messageOf(catalog: Catalog, warn: string | WrittenMessage): Message[] {
  const written = typeof warn === "string" ? catalog.messages[warn] : warn;
  if (written === undefined) return [];
  const { wear, ...message } = written;
  const worn = wear?.flatMap((id) => wearOf(catalog, id));
  return [{ ...message, ...(worn ? { wear: worn } : {}) }];
}

/** What must be worn where all of this is asked for: each thing once, and none that another serves for. */
export function leastOf(asked: readonly Wear[]): Wear[] {
  return asked.reduce<Wear[]>(
    (kept, one) =>
      kept.some((other) => serves(other, one.id))
        ? kept
        : [...kept.filter((other) => !serves(one, other.id)), one],
    [],
  );
}

/** Whether a thing guards what another guards, or is that other. */
function serves({ id, also }: Wear, other: string): boolean {
  return id === other || also.includes(other);
}

function wearOf({ wear }: Catalog, id: string): Wear[] {
  const known = wear[id];
  if (known === undefined) return [];
  const also = new Set(known.also);
  for (const next of also) for (const more of wear[next]?.also ?? []) also.add(more);
  return [{ id, name: known.name, for: known.for, also: [...also] }];
}
