import type { ICellData, IDisposable, IRange } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  InsertSheetMutation,
  RemoveColMutation,
  RemoveRowMutation,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetRowHiddenMutation,
  SetRowVisibleMutation,
  SetSelectionsOperation,
  SetWorksheetActiveOperation,
  SetWorksheetHideMutation,
  SetWorksheetNameMutation,
  SetWorksheetOrderMutation,
} from "@univerjs/sheets";
import { rectangleAddress } from "./addresses";
import type { Rectangle } from "./area";
import type { Book } from "./book";
import { type CellContent, contentOf, typeOf, type ValueType } from "./cells";

/** Something that happened to the workbook, whoever did it. */
export type Change =
  | {
      readonly kind: "cells";
      readonly sheetId: string;
      readonly rectangle: Rectangle;
      readonly content: boolean;
      readonly formulas: boolean;
      /** Of a single cell: what it held and holds. */
      readonly before?: CellState;
      readonly after?: CellState;
    }
  | {
      readonly kind: "RowInserted" | "RowDeleted" | "ColumnInserted" | "ColumnDeleted";
      readonly sheetId: string;
      readonly rectangle: Rectangle;
    }
  | { readonly kind: "rowsSorted" | "columnsSorted"; readonly sheetId: string; readonly rectangle: Rectangle }
  | { readonly kind: "RowsHidden" | "RowsShown"; readonly sheetId: string; readonly rectangles: readonly Rectangle[] }
  | { readonly kind: "sheetAdded" | "sheetDeleted" | "sheetMoved"; readonly sheetId: string }
  | { readonly kind: "sheetRenamed"; readonly sheetId: string; readonly before: string; readonly after: string }
  | { readonly kind: "sheetVisibility"; readonly sheetId: string }
  | { readonly kind: "sheetActivated"; readonly sheetId: string; readonly left: string }
  | { readonly kind: "selection"; readonly sheetId: string }
  | { readonly kind: "calculated"; readonly sheetId: string; readonly address: string };

type CellState = { readonly content: CellContent; readonly type: ValueType };

type Cells = Record<number, Record<number, ICellData | null>>;

const rowsAndColumns: Record<string, "RowInserted" | "RowDeleted" | "ColumnInserted" | "ColumnDeleted"> = {
  [InsertRowMutation.id]: "RowInserted",
  [RemoveRowMutation.id]: "RowDeleted",
  [InsertColMutation.id]: "ColumnInserted",
  [RemoveColMutation.id]: "ColumnDeleted",
};

const rowVisibility: Record<string, "RowsHidden" | "RowsShown"> = {
  [SetRowHiddenMutation.id]: "RowsHidden",
  [SetRowVisibleMutation.id]: "RowsShown",
};

const sheets: Record<string, "sheetAdded" | "sheetDeleted" | "sheetRenamed" | "sheetMoved" | "sheetVisibility"> = {
  [InsertSheetMutation.id]: "sheetAdded",
  [RemoveSheetMutation.id]: "sheetDeleted",
  [SetWorksheetNameMutation.id]: "sheetRenamed",
  [SetWorksheetOrderMutation.id]: "sheetMoved",
  [SetWorksheetHideMutation.id]: "sheetVisibility",
};

/** Listens to the engine and tells in the workbook's terms what changed. */
export class Changes {
  /** Events stay silent while an add-in has switched them off. */
  enabled = true;
  /** Who is acting: a call of the API, or the person at the grid. */
  actor: "addin" | "user" = "user";
  readonly #book: Book;
  readonly #listeners = new Set<(change: Change) => void>();
  readonly #listening: IDisposable[];
  #before: CellState | undefined;
  #activeSheet: string;
  readonly #sheetNames: Map<string, string>;

  constructor(book: Book) {
    this.#book = book;
    this.#activeSheet = book.workbook.getActiveSheet()?.getSheetId() ?? "";
    this.#sheetNames = new Map(book.workbook.getSheets().map((sheet) => [sheet.getSheetId(), sheet.getName()]));
    this.#listening = [
      book.commands.beforeCommandExecuted((command) => {
        if (command.id !== SetRangeValuesMutation.id) return;
        const { subUnitId, cellValue } = command.params as { subUnitId: string; cellValue: Cells };
        const rectangle = extent(cellValue);
        this.#before =
          rectangle?.rowCount === 1 && rectangle.columnCount === 1
            ? this.#stateOf(subUnitId, rectangle.row, rectangle.column)
            : undefined;
      }),
      book.commands.onCommandExecuted((command, options) => this.#told(command, options)),
    ];
  }

  /** Calls back on every change; answers how to stop. */
  listen(listener: (change: Change) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Does something that is the host's own doing and no event. */
  silently(work: () => void): void {
    const { enabled } = this;
    this.enabled = false;
    try {
      work();
    } finally {
      this.enabled = enabled;
    }
  }

  tell(change: Change): void {
    if (!this.enabled) return;
    for (const listener of [...this.#listeners]) listener(change);
  }

  dispose(): void {
    this.#listeners.clear();
    for (const listening of this.#listening) listening.dispose();
  }

  #stateOf(sheetId: string, row: number, column: number): CellState | undefined {
    const cell = this.#book.workbook.getSheetBySheetId(sheetId)?.getCellMatrix().getValue(row, column);
    return { content: contentOf(cell), type: typeOf(cell) };
  }

  #told(command: { id: string; params?: object }, options?: object): void {
    const params = (command.params ?? {}) as { unitId?: string; subUnitId?: string };
    const sheetId = params.subUnitId ?? "";
    if (command.id === SetRangeValuesMutation.id) {
      if ((options as { applyFormulaCalculationResult?: boolean } | undefined)?.applyFormulaCalculationResult) {
        const calculated = extent((command.params as { cellValue: Cells }).cellValue);
        if (calculated) this.tell({ kind: "calculated", sheetId, address: rectangleAddress(calculated) });
        return;
      }
      this.#cellsChanged(sheetId, (command.params as { cellValue: Cells }).cellValue);
      return;
    }
    const line = rowsAndColumns[command.id];
    if (line) {
      const { startRow, startColumn, endRow, endColumn } = (command.params as { range: IRange }).range;
      const byRow = line.startsWith("Row");
      this.tell({
        kind: line,
        sheetId,
        rectangle: byRow
          ? wholeRows(startRow, endRow)
          : { row: 0, rowCount: 1_048_576, column: startColumn, columnCount: endColumn - startColumn + 1 },
      });
      return;
    }
    const visibility = rowVisibility[command.id];
    if (visibility) {
      const { ranges } = command.params as { ranges: readonly IRange[] };
      this.tell({
        kind: visibility,
        sheetId,
        rectangles: ranges.map(({ startRow, endRow }) => wholeRows(startRow, endRow)),
      });
      return;
    }
    const sheet = sheets[command.id];
    if (sheet) {
      const id = (command.params as { sheet?: { id: string } }).sheet?.id ?? sheetId;
      const before = this.#sheetNames.get(id) ?? "";
      const after = this.#book.workbook.getSheetBySheetId(id)?.getName() ?? "";
      this.#sheetNames.set(id, after);
      this.tell(sheet === "sheetRenamed" ? { kind: sheet, sheetId: id, before, after } : { kind: sheet, sheetId: id });
    } else if (command.id === SetWorksheetActiveOperation.id) {
      const left = this.#activeSheet;
      this.#activeSheet = sheetId;
      if (left !== sheetId) this.tell({ kind: "sheetActivated", sheetId, left });
    } else if (command.id === SetSelectionsOperation.id) {
      this.tell({ kind: "selection", sheetId });
    }
  }

  #cellsChanged(sheetId: string, cellValue: Cells): void {
    const rectangle = extent(cellValue);
    if (!rectangle) return;
    const cells = Object.values(cellValue).flatMap((row) => Object.values(row ?? {}));
    const content = cells.some((cell) => !cell || "v" in cell || "f" in cell || "p" in cell);
    const before = this.#before;
    if (content) this.#book.tables.headingsChanged(sheetId, rectangle);
    const after = before ? this.#stateOf(sheetId, rectangle.row, rectangle.column) : undefined;
    this.tell({
      kind: "cells",
      sheetId,
      rectangle,
      content,
      formulas: cells.some((cell) => Boolean(cell?.f)),
      ...(before && after ? { before, after } : {}),
    });
  }
}

const wholeRows = (first: number, last: number): Rectangle => ({
  row: first,
  rowCount: last - first + 1,
  column: 0,
  columnCount: 16_384,
});

/** The smallest rectangle around the cells. */
function extent(cells: Cells | undefined): Rectangle | null {
  const rows = Object.keys(cells ?? {}).map(Number);
  if (!cells || rows.length === 0) return null;
  let first = Number.POSITIVE_INFINITY;
  let last = -1;
  for (const row of rows) {
    for (const key of Object.keys(cells[row] ?? {})) {
      const column = Number(key);
      if (column < first) first = column;
      if (column > last) last = column;
    }
  }
  if (last < 0) return null;
  const row = rows.reduce((a, b) => Math.min(a, b));
  const lastRow = rows.reduce((a, b) => Math.max(a, b));
  return { row, rowCount: lastRow - row + 1, column: first, columnCount: last - first + 1 };
}
