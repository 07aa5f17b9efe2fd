import { inflateSync } from "node:zlib";

/** Bytes of a WOFF header and of one row of its directory (WOFF 1.0, sections 3 and 4). */
const [woffHead, woffRow] = [44, 20];

/** Bytes of the header and of one row of the directory of a plain font program. */
const [head, row] = [12, 16];

/**
 * A WOFF file as the plain font program that is packed in it; any other file as it is. fontkit unpacks a table
 * again for each glyph that it reads, so the unpacking is done here once.
 */
export function unpacked(file: Buffer): Buffer {
  if (file.toString("latin1", 0, 4) !== "wOFF") return file;
  const count = file.readUInt16BE(12);
  const power = 2 ** Math.floor(Math.log2(count));
  const start = Buffer.alloc(head + count * row);
  file.copy(start, 0, 4, 8);
  [count, power * row, Math.log2(power), (count - power) * row].forEach((value, i) =>
    start.writeUInt16BE(value, 4 + 2 * i),
  );
  const tables: Buffer[] = [];
  let at = start.length;
  for (let i = 0; i < count; i++) {
    const from = woffHead + i * woffRow;
    const to = head + i * row;
    const table = tableAt(file, from);
    file.copy(start, to, from, from + 4);
    file.copy(start, to + 4, from + 16, from + 20);
    start.writeUInt32BE(at, to + 8);
    start.writeUInt32BE(table.length, to + 12);
    const padded = Buffer.alloc(Math.ceil(table.length / 4) * 4);
    table.copy(padded);
    tables.push(padded);
    at += padded.length;
  }
  return Buffer.concat([start, ...tables]);
}

/** The table that a row of the directory leads to; one that is as long as it was is not packed. */
function tableAt(file: Buffer, at: number): Buffer {
  const [offset, packed, length] = [4, 8, 12].map((n) => file.readUInt32BE(at + n));
  const bytes = file.subarray(offset, (offset ?? 0) + (packed ?? 0));
  return packed === length ? bytes : inflateSync(bytes);
}
