import { createHash } from "node:crypto";

/** The first eight hexadecimal figures of SHA-256 over a value's JSON. */
export function digestOf(value: unknown): string {
  return createHash("sha256").update(jsonOf(value)).digest("hex").slice(0, 8);
}

/** A value's JSON without the places that its parts were read from: they differ from machine to machine. */
export function jsonOf(value: unknown): string {
  return JSON.stringify(value, (key, part: unknown) => (key === "origin" ? undefined : part), 2);
}
