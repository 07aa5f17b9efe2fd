import { createHash } from "node:crypto";

/** The first eight hexadecimal figures of SHA-256 over a value's JSON. */
export function digestOf(value: unknown): string {
  return createHash("sha256").update(JSON.stringify(value)).digest("hex").slice(0, 8);
}
