import { isTag } from "domhandler";
import type { Box } from "./box.js";
import type { Track } from "./style.js";
import { widthsOf } from "./tracks.js";
import { lengthOf } from "./units.js";

/** A row of a table, and whether it stands in the head. */
export interface Row {
  box: Box;
  head: boolean;
}

/** The rows of a table, head first. */
export function rowsOf(table: Box): Row[] {
  return table.children.flatMap((group) =>
    group.children.map((box) => ({ box, head: group.element.name === "thead" })),
  );
}

/** The widths of a table's columns, from its colgroup; a column without a width shares what is left. */
export function columnsOf(table: Box, width: number): number[] {
  const group = table.element.children.filter(isTag).find(({ name }) => name === "colgroup");
  const tracks = (group?.children ?? []).filter(isTag).map((col): Track => {
    const text = /width: *([^;]+)/.exec(col.attribs["style"] ?? "")?.[1] ?? "";
    const points = lengthOf(text, table.style.size);
    return points === undefined ? { share: 1 } : { points };
  });
  const [first] = rowsOf(table);
  const count = first?.box.children.length ?? 1;
  return widthsOf(tracks.length > 0 ? tracks : Array(count).fill({ share: 1 }), width, 0);
}
