import { create } from "qrcode";

const quiet = 4;

/** A text as a QR code (ISO/IEC 18004, error correction level M) with its quiet zone: runs of modules as one path. */
export function qrSvg(text: string): string {
  const { modules } = create(text, { errorCorrectionLevel: "M" });
  const { size } = modules;
  const rows = Array.from({ length: size }, (_, y) =>
    runsOf(Array.from({ length: size }, (_dark, x) => modules.get(y, x) === 1)).map(
      ([x, length]) => `M${x + quiet} ${y + quiet}h${length}v1h-${length}z`,
    ),
  );
  const span = size + 2 * quiet;
  const path = rows.flat().join("");
  return `<svg class="qr" viewBox="0 0 ${span} ${span}"><path d="${path}" fill="#000000"/></svg>`;
}

/** Start and length of each run of dark modules. */
function runsOf(row: readonly boolean[]): [number, number][] {
  const runs: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (dark && last && last[0] + last[1] === x) last[1]++;
    else if (dark) runs.push([x, 1]);
  });
  return runs;
}
