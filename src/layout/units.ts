/** Points to a millimetre. */
export const mm = 72 / 25.4;

/** A CSS length in points: `6mm`, `12pt`, `1.2em` (of a font size) or `0`. */
export function lengthOf(text: string, em: number): number | undefined {
  const found = /^(-?[\d.]+)(mm|pt|em)?$/.exec(text);
  const value = Number(found?.[1]);
  if (!found || Number.isNaN(value)) return undefined;
  const unit = found[2];
  if (unit === undefined) return value === 0 ? 0 : undefined;
  return value * { mm, pt: 1, em }[unit as "mm" | "pt" | "em"];
}
