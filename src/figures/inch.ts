/** Reads a number as the trade writes it: 8, 0.25, 5/16, '1 1/8' or 1-1/8; nothing when it is none. */
export function numberOf(text: string): number | undefined {
  if (/^[-+]?(\d+\.?\d*|\.\d+)$/.test(text)) return Number(text);
  const match = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
  if (match === null || Number(match[3]) === 0) return undefined;
  return Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]);
}

/** An inch size as a technician reads it: the nearest 1/64, in lowest terms, as '5/16' or '1 1/8'; with '≈' where it is not exact. */
export function fractionOf(inches: number): string {
  const whole = Math.round(Math.abs(inches) * 64);
  const sign = inches < 0 && whole > 0 ? "-" : "";
  const exact = Math.abs(Math.abs(inches) * 64 - whole) < 1e-9 ? "" : "≈ ";
  const [over, under] = lowest(whole % 64, 64);
  const parts = [Math.floor(whole / 64), over > 0 ? `${over}/${under}` : ""].filter(Boolean);
  return `${exact}${sign}${parts.join(" ") || "0"}`;
}

function lowest(over: number, under: number): [number, number] {
  return over % 2 === 0 && over > 0 ? lowest(over / 2, under / 2) : [over, under];
}

/** The nearest of the usual metric drills, 1 to 14 mm by 0.5 mm, for a diameter in mm; nothing outside them. */
export function nearestDrill(millimetres: number): number | undefined {
  const drill = Math.round(millimetres * 2) / 2;
  return drill >= 1 && drill <= 14 ? drill : undefined;
}
