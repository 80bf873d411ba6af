import { numfmt } from "@univerjs/core";
import { RemoveSuperTableMutation, SetSuperTableMutation } from "@univerjs/engine-formula";
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  SetSheetTableMutation,
  TableManager,
} from "@univerjs/sheets-table";
import { merge, type Subscription } from "rxjs";
import type { Rectangle } from "./area";
import { contains } from "./area";
import type { Book } from "./book";
import { contentOf, formatAt, writeCells } from "./cells";
import { freshIdentity } from "./identity";
import type { FormulaTable } from "./structuredReferences";

/** What Excel keeps of a table that the engine has no place for. */
export type TableLook = {
  style: string;
  showBandedRows: boolean;
  showBandedColumns: boolean;
  showFilterButton: boolean;
  highlightFirstColumn: boolean;
  highlightLastColumn: boolean;
  showTotals: boolean;
  /** Made of headings alone: the empty row below them is there to be filled, and is no row of data yet. */
  isNew: boolean;
};

export const freshLook: TableLook = {
  style: "TableStyleMedium2",
  showBandedRows: true,
  showBandedColumns: false,
  showFilterButton: true,
  highlightFirstColumn: false,
  highlightLastColumn: false,
  showTotals: false,
  isNew: false,
};

export type Table = {
  readonly id: string;
  readonly name: string;
  readonly sheetId: string;
  /** Header row, rows of data and, where shown, the row of totals. */
  readonly rectangle: Rectangle;
  readonly columns: readonly { readonly id: string; readonly name: string }[];
  readonly look: TableLook;
};

type EngineTable = NonNullable<ReturnType<TableManager["getTableById"]>>;
type EngineRange = { startRow: number; startColumn: number; endRow: number; endColumn: number };

const toRectangle = (range: EngineRange): Rectangle => ({
  row: range.startRow,
  column: range.startColumn,
  rowCount: range.endRow - range.startRow + 1,
  columnCount: range.endColumn - range.startColumn + 1,
});

export const toEngineRange = ({ row, column, rowCount, columnCount }: Rectangle): EngineRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rowCount - 1,
  endColumn: column + columnCount - 1,
});

/** The rows of data of a table, or null where it has none. */
export function dataRows(table: Table): Rectangle | null {
  const { row, column, rowCount, columnCount } = table.rectangle;
  const count = rowCount - 1 - (table.look.showTotals ? 1 : 0);
  return count > 0 ? { row: row + 1, column, rowCount: count, columnCount } : null;
}

/** The workbook's tables, each known to formulas by an alias that outlives renaming. */
export class Tables {
  readonly #book: Book;
  readonly #manager: TableManager;
  readonly #aliases = new Map<string, string>();
  readonly #columnAliases = new Map<string, string>();
  readonly #subscription: Subscription;
  readonly #listeners = { added: new Set<(table: Table) => void>(), deleted: new Set<(table: Table) => void>() };

  constructor(book: Book) {
    this.#book = book;
    this.#manager = book.injector.get(TableManager);
    const { tableAdd$, tableRangeChanged$, tableNameChanged$, tableDelete$ } = this.#manager;
    this.#subscription = merge(tableAdd$, tableRangeChanged$, tableNameChanged$).subscribe(({ tableId }) =>
      this.#tellFormulas(tableId),
    );
    this.#subscription.add(tableAdd$.subscribe(({ tableId }) => this.#tell("added", this.get(tableId))));
    this.#subscription.add(
      tableDelete$.subscribe(({ tableId, tableName: name, subUnitId, range }) => {
        this.#tell("deleted", {
          id: tableId,
          name,
          sheetId: subUnitId,
          rectangle: toRectangle(range),
          columns: [],
          look: freshLook,
        });
        const tableName = this.#aliases.get(tableId);
        if (tableName) book.commands.syncExecuteCommand(RemoveSuperTableMutation.id, { unitId: book.id, tableName });
      }),
    );
    for (const table of this.list()) this.#tellFormulas(table.id);
  }

  list(sheetId?: string): Table[] {
    return this.#manager
      .getTableList(this.#book.id)
      .filter((info) => sheetId === undefined || info.subUnitId === sheetId)
      .map((info) => this.get(info.id)!);
  }

  get(id: string): Table | null {
    const table = this.#manager.getTableById(this.#book.id, id);
    if (!table) return null;
    const info = table.getTableInfo();
    return {
      id,
      name: info.name,
      sheetId: info.subUnitId,
      rectangle: toRectangle(info.range),
      columns: info.columns.map((column) => ({ id: column.id, name: column.displayName })),
      look: { ...freshLook, ...info.meta },
    };
  }

  named(name: string): Table | null {
    return this.list().find((table) => table.name.toLowerCase() === name.toLowerCase()) ?? null;
  }

  /** The table a cell is in. */
  at(sheetId: string, row: number, column: number): Table | null {
    const cell = { row, column, rowCount: 1, columnCount: 1 };
    return this.list(sheetId).find((table) => contains(table.rectangle, cell)) ?? null;
  }

  /** Adds a table over cells whose first row holds the headings. */
  add(sheetId: string, rectangle: Rectangle, name: string): string {
    this.#completeHeadings(sheetId, rectangle);
    const tableId = freshIdentity();
    this.#book.undoable(
      sheetId,
      [
        {
          id: AddSheetTableMutation.id,
          params: { tableId, name, range: toEngineRange(rectangle), header: this.#headings(sheetId, rectangle) },
        },
      ],
      [{ id: DeleteSheetTableMutation.id, params: { tableId } }],
    );
    return tableId;
  }

  rename(table: Table, name: string): void {
    this.#configure(table, { name }, { name: table.name });
  }

  /** Gives the table another rectangle. New columns stand at, and lost ones begin at, `at` of the sheet: by default the right edge. */
  resize(table: Table, rectangle: Rectangle, at?: number): void {
    const before = toEngineRange(table.rectangle);
    const after = toEngineRange(rectangle);
    const more = rectangle.columnCount - table.rectangle.columnCount;
    // The engine's own way of moving the right edge puts new columns before the last; this one after it.
    const operation = (type: "insert" | "delete", count: number) => ({
      rowColOperation: {
        operationType: type,
        rowColType: "column",
        index: at ?? (type === "insert" ? before.endColumn + 1 : before.endColumn - count + 1),
        count,
      },
    });
    this.#configure(
      table,
      {
        ...(more === 0 ? {} : operation(more > 0 ? "insert" : "delete", Math.abs(more))),
        updateRange: { newRange: after },
      },
      { updateRange: { newRange: before } },
    );
    this.#completeHeadings(table.sheetId, rectangle);
    this.headingsChanged(table.sheetId, { ...rectangle, rowCount: 1 });
  }

  remove(table: Table): void {
    const json = this.#engineTable(table.id).toJSON();
    this.#book.undoable(
      table.sheetId,
      [{ id: DeleteSheetTableMutation.id, params: { tableId: table.id } }],
      [
        {
          id: AddSheetTableMutation.id,
          params: {
            tableId: table.id,
            name: table.name,
            range: json.range,
            header: table.columns.map((column) => column.name),
            options: { ...json.options, columns: this.#engineTable(table.id).getTableInfo().columns },
          },
        },
      ],
    );
  }

  setLook(table: Table, look: Partial<TableLook>): void {
    this.#engineTable(table.id).setTableMeta({ ...table.look, ...look });
    if (look.showTotals !== undefined) this.#tellFormulas(table.id);
  }

  /** Headings are the names of columns: cells that changed there rename the columns, as in Excel. */
  headingsChanged(sheetId: string, changed: Rectangle): void {
    for (const { id, rectangle, columns } of this.list(sheetId)) {
      const isTouched =
        rectangle.row >= changed.row &&
        rectangle.row < changed.row + changed.rowCount &&
        rectangle.column < changed.column + changed.columnCount &&
        rectangle.column + rectangle.columnCount > changed.column;
      if (!isTouched) continue;
      const names = this.#headings(sheetId, rectangle);
      if (names.every((name, index) => name === columns[index]?.name)) continue;
      const table = this.#engineTable(id);
      names.forEach((name, index) => {
        const column = table.getTableColumnByIndex(index);
        if (column) column.displayName = name;
      });
      this.#tellFormulas(id);
    }
  }

  /** Calls back when a table comes or goes; answers how to stop. */
  listen(what: "added" | "deleted", listener: (table: Table) => void): () => void {
    this.#listeners[what].add(listener);
    return () => this.#listeners[what].delete(listener);
  }

  /** How formulas see the tables. */
  forFormulas(): FormulaTable[] {
    return this.list().map((table) => this.forFormula(table));
  }

  forFormula(table: Table): FormulaTable {
    return {
      alias: this.#aliasOf(table.id),
      name: table.name,
      columns: table.columns.map((column) => ({ alias: this.#columnAliasOf(table.id, column.id), name: column.name })),
    };
  }

  dispose(): void {
    this.#subscription.unsubscribe();
  }

  #tell(what: "added" | "deleted", table: Table | null): void {
    if (!table || !this.#book.changes.enabled) return;
    for (const listener of [...this.#listeners[what]]) listener(table);
  }

  #engineTable(id: string): EngineTable {
    return this.#manager.getTableById(this.#book.id, id)!;
  }

  #aliasOf(tableId: string): string {
    let alias = this.#aliases.get(tableId);
    if (!alias) {
      alias = `TBLQ${this.#aliases.size + 1}`;
      this.#aliases.set(tableId, alias);
    }
    return alias;
  }

  #columnAliasOf(tableId: string, columnId: string): string {
    const key = `${tableId} ${columnId}`;
    let alias = this.#columnAliases.get(key);
    if (!alias) {
      const count = [...this.#columnAliases.keys()].filter((known) => known.startsWith(`${tableId} `)).length;
      alias = `C${count + 1}`;
      this.#columnAliases.set(key, alias);
    }
    return alias;
  }

  #tellFormulas(tableId: string): void {
    const table = this.get(tableId);
    if (!table) return;
    const { alias, columns } = this.forFormula(table);
    const rows = dataRows(table);
    const last = rows ? rows.row + rows.rowCount - 1 : table.rectangle.row;
    this.#book.commands.syncExecuteCommand(SetSuperTableMutation.id, {
      unitId: this.#book.id,
      tableName: alias,
      reference: {
        sheetId: table.sheetId,
        range: { ...toEngineRange(table.rectangle), endRow: last },
        titleMap: new Map(columns.map((column, index) => [column.alias, index])),
      },
    });
  }

  #configure(table: Table, config: object, undo: object): void {
    const mutation = (what: object) => ({ id: SetSheetTableMutation.id, params: { tableId: table.id, config: what } });
    this.#book.undoable(table.sheetId, [mutation(config)], [mutation(undo)]);
  }

  /** The text of the heading cells. */
  #headings(sheetId: string, { row, column, columnCount }: Rectangle): string[] {
    const cells = this.#book.worksheet(sheetId).getCellMatrix();
    return Array.from({ length: columnCount }, (_, index) => {
      const content = contentOf(cells.getValue(row, column + index));
      if (typeof content !== "number") return String(content);
      const format = formatAt({ book: this.#book, sheetId }, row, column + index);
      return numfmt.format(format, content, { throws: false });
    });
  }

  /** Makes headings text, fills empty ones with "Column1" and numbers repeated ones, as Excel does. */
  #completeHeadings(sheetId: string, rectangle: Rectangle): void {
    const taken = new Set<string>();
    const cells: Record<number, { v: string; t: 1 }> = {};
    this.#headings(sheetId, rectangle).forEach((heading, index) => {
      const base = heading === "" ? `Column${index + 1}` : heading;
      let name = base;
      for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${base}${number}`;
      taken.add(name.toLowerCase());
      cells[rectangle.column + index] = { v: name, t: 1 };
    });
    const matrix = this.#book.worksheet(sheetId).getCellMatrix();
    for (const [column, cell] of Object.entries(cells)) {
      if (contentOf(matrix.getValue(rectangle.row, Number(column))) === cell.v) delete cells[Number(column)];
    }
    if (Object.keys(cells).length) writeCells({ book: this.#book, sheetId }, { [rectangle.row]: cells });
  }
}
