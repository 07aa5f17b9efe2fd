import type { Drawn, Text } from "./drawn.js";

/** The relative luminance of a colour or of a grey between 0 and 255, as WCAG reckons it. */
export function luminance(color: string | number): number {
  const parts =
    typeof color === "number"
      ? [color, color, color]
      : [1, 3, 5].map((at) => parseInt(color.slice(at, at + 2), 16));
  const [r = 0, g = 0, b = 0] = parts.map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** The contrast of two colours or greys: from 1 for none to 21 for black on white. */
export function contrast(a: string | number, b: string | number): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].toSorted((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

/** The colour that lies under a text: the last fill around its middle, or the paper. */
export function groundOf({ fills }: Drawn, { x, right, base, size }: Text): string {
  const [cx, cy] = [(x + right) / 2, base - size * 0.35];
  const under = fills.findLast(
    (fill) => cx >= fill.x && cx <= fill.x + fill.w && cy >= fill.y && cy <= fill.y + fill.h,
  );
  return under?.color ?? "#FFFFFF";
}
