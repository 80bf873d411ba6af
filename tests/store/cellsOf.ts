import type { Cell } from "../../src/reading/grid";
import { columnsOf, type StoreTable, type TableCells } from "../../src/store/storeTable";

/** A table as it stands when these rows have been written: headings in row 4, from column A on. */
export const cellsOf = <Row>(table: StoreTable<Row>, rows: readonly Row[]): TableCells =>
  typedCells(
    table,
    rows.map((row) => columnsOf(table).map(([field, { write }]) => write(row[field]))),
  );

/** A table as a coach has typed it. */
export const typedCells = <Row>(
  table: StoreTable<Row>,
  body: readonly (readonly Cell[])[],
  headings: readonly string[] = columnsOf(table).map(([, { heading }]) => heading),
): TableCells => ({ sheet: table.sheet, headings, firstRow: 4, firstColumn: 0, body });
