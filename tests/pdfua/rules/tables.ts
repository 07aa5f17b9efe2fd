import { type Dict, type Pdf, list, text } from "../objects.js";
import { type Element, attributesOf } from "../structure.js";
import { type Check, type Rules, each } from "./rule.js";

/** Clauses 7.2 and 7.5 for the grid of a table: no holes, no overlaps, a head for each cell. */
export const tableRules: Rules = {
  "7.2-15": onGrid(({ overlaps }) => overlaps[0] && `cells overlap at ${overlaps[0]}`),
  "7.2-41": onGrid(({ rows, tooDeep }) =>
    tooDeep ? `a cell reaches below the ${rows.length} rows` : undefined,
  ),
  "7.2-42": onGrid(({ rows, spanned }) => {
    const uneven = unevenRow(rows);
    return uneven === undefined || spanned ? undefined : `row ${uneven + 1} has other columns`;
  }),
  "7.2-43": onGrid(({ rows, spanned }) => {
    const uneven = unevenRow(rows);
    return uneven === undefined || !spanned ? undefined : `row ${uneven + 1} spans other columns`;
  }),
  "7.5-1": onGrid((grid, pdf) => {
    const alone = grid.cells.find(
      (cell) =>
        cell.element.type === "TD" &&
        headersOf(pdf, cell).length === 0 &&
        !hasHead(pdf, grid, cell),
    );
    return alone && `row ${alone.row + 1}, column ${alone.column + 1} has no head`;
  }),
  "7.5-2": onGrid((grid, pdf) => {
    const known = new Set(grid.cells.map(({ element }) => text(pdf, element.dict["/ID"])));
    const unknown = grid.cells.flatMap((cell) => headersOf(pdf, cell)).find((id) => !known.has(id));
    return unknown && `there is no head ${unknown}`;
  }),
};

/** A cell at its place. */
interface Cell {
  element: Element;
  row: number;
  column: number;
  /** Columns and rows that it takes. */
  across: number;
  down: number;
}

interface Grid {
  cells: Cell[];
  /** The cells of each row, by column. */
  rows: (Cell | undefined)[][];
  overlaps: string[];
  tooDeep: boolean;
  spanned: boolean;
}

function onGrid(bad: (grid: Grid, pdf: Pdf) => string | undefined): Check {
  return (subject) =>
    each("Table", (table) => bad(gridOf(subject.pdf, table), subject.pdf))(subject);
}

function gridOf(pdf: Pdf, table: Element): Grid {
  const lines = table.kids.flatMap((kid) => (kid.type === "TR" ? [kid] : kid.kids));
  const grid: Grid = {
    cells: [],
    rows: lines.map(() => []),
    overlaps: [],
    tooDeep: false,
    spanned: false,
  };
  lines.forEach((line, row) => {
    for (const element of line.kids) {
      const held = attributesOf(pdf, element, "/Table");
      const column = grid.rows[row]?.findIndex((cell) => cell === undefined) ?? -1;
      const cell: Cell = {
        element,
        row,
        column: column < 0 ? (grid.rows[row]?.length ?? 0) : column,
        across: Number(held["/ColSpan"] ?? 1),
        down: Number(held["/RowSpan"] ?? 1),
      };
      grid.spanned ||= cell.across > 1;
      place(grid, cell);
    }
  });
  return grid;
}

function place(grid: Grid, cell: Cell): void {
  grid.cells.push(cell);
  for (let row = cell.row; row < cell.row + cell.down; row++) {
    const line = grid.rows[row];
    if (!line) grid.tooDeep = true;
    for (let column = cell.column; column < cell.column + cell.across; column++) {
      if (line?.[column]) grid.overlaps.push(`row ${row + 1}, column ${column + 1}`);
      if (line) line[column] = cell;
    }
  }
}

function unevenRow(rows: Grid["rows"]): number | undefined {
  const width = rows[0]?.length ?? 0;
  const at = rows.findIndex((row) => row.length !== width || row.includes(undefined));
  return at < 0 ? undefined : at;
}

function headersOf(pdf: Pdf, { element }: Cell): string[] {
  const { "/Headers": headers }: Dict = attributesOf(pdf, element, "/Table");
  return list(pdf, headers).map((one) => text(pdf, one) ?? "");
}

/** Whether a head with the right scope stands in the cell's row or column. */
function hasHead(pdf: Pdf, { cells }: Grid, { row, column }: Cell): boolean {
  return cells.some((head) => {
    if (head.element.type !== "TH") return false;
    const scope = attributesOf(pdf, head.element, "/Table")["/Scope"];
    const above = column >= head.column && column < head.column + head.across;
    const beside = row >= head.row && row < head.row + head.down;
    return (
      (above && (scope === "/Column" || scope === "/Both")) ||
      (beside && (scope === "/Row" || scope === "/Both"))
    );
  });
}
