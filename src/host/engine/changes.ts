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
import { type Rectangle, sheetColumns, sheetRows } from "./area";
import type { Book } from "./book";
import { type CellContent, contentOf, readFormulas, typeOf, type ValueType } from "./cells";

/** Something that happened to the workbook, whoever did it. */
export type Change =
  | {
      readonly kind: "cells";
      readonly sheetId: string;
      readonly rectangle: Rectangle;
      readonly content: boolean;
      /** Cells that got a formula or lost one, with what stood there before as people write it; "" for none. */
      readonly formulas: readonly { readonly address: string; readonly before: string }[];
      /** Of a single cell: what it held and holds. */
      readonly before?: CellState;
      readonly after?: CellState;
    }
  | {
      readonly kind: "RowInserted" | "RowDeleted" | "ColumnInserted" | "ColumnDeleted";
      readonly sheetId: string;
      readonly rectangle: Rectangle;
    }
  | {
      readonly kind: "CellInserted" | "CellDeleted";
      readonly sheetId: string;
      readonly rectangle: Rectangle;
      /** Which way the cells behind went. */
      readonly shift: "Down" | "Right" | "Up" | "Left";
    }
  | { readonly kind: "clicked"; readonly sheetId: string; readonly address: string; readonly offset: Offset }
  | { readonly kind: "rowsSorted" | "columnsSorted"; readonly sheetId: string; readonly rectangle: Rectangle }
  | { readonly kind: "RowsHidden" | "RowsShown"; readonly sheetId: string; readonly rectangles: readonly Rectangle[] }
  | { readonly kind: "sheetAdded" | "sheetDeleted" | "sheetMoved"; readonly sheetId: string }
  | { readonly kind: "sheetRenamed"; readonly sheetId: string; readonly before: string; readonly after: string }
  | { readonly kind: "sheetVisibility"; readonly sheetId: string }
  | { readonly kind: "sheetActivated"; readonly sheetId: string; readonly left: string }
  | { readonly kind: "selection"; readonly sheetId: string }
  | { readonly kind: "calculated"; readonly sheetId: string; readonly address: string };

/** Points from the upper left corner of a cell. */
type Offset = { readonly x: number; readonly y: number };

/** How the engine says that it writes of itself: the results of formulas, or formulas ahead of an edit. */
type WriteOptions = { readonly applyFormulaCalculationResult?: boolean; readonly fromFormula?: boolean };

type TouchedFormula = { readonly address: string; readonly before: string; readonly isSame: boolean };

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
  #formulas: TouchedFormula[] = [];
  /** What was there before the engine, ahead of the edit itself, told its formulas of it. */
  #ahead: { readonly before: CellState | undefined; readonly formulas: readonly TouchedFormula[] } | null = null;
  #isShifting = false;
  #activeSheet: string;
  readonly #sheetNames: Map<string, string>;

  constructor(book: Book) {
    this.#book = book;
    this.#activeSheet = book.workbook.getActiveSheet()?.getSheetId() ?? "";
    this.#sheetNames = new Map(book.workbook.getSheets().map((sheet) => [sheet.getSheetId(), sheet.getName()]));
    this.#listening = [
      book.commands.beforeCommandExecuted((command, options) => {
        if (command.id === SetRangeValuesMutation.id) {
          this.#remember(command.params as { subUnitId: string; cellValue: Cells }, (options ?? {}) as WriteOptions);
        }
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

  /** Moves cells: what the engine writes meanwhile is no edit, the move itself is told once. */
  async shifting(change: Extract<Change, { kind: "CellInserted" | "CellDeleted" }>, work: () => Promise<void>) {
    this.#isShifting = true;
    try {
      await work();
    } finally {
      this.#isShifting = false;
    }
    this.#book.tables.headingsChanged(change.sheetId, wholeSheet);
    this.tell(change);
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

  /** Keeps what cells hold that are about to be written. An edit with formulas comes twice: the first is the engine's. */
  #remember({ subUnitId, cellValue }: { subUnitId: string; cellValue: Cells }, options: WriteOptions): void {
    if (options.applyFormulaCalculationResult) return;
    const rectangle = extent(cellValue);
    const before =
      rectangle?.rowCount === 1 && rectangle.columnCount === 1
        ? this.#stateOf(subUnitId, rectangle.row, rectangle.column)
        : undefined;
    const formulas = this.#listeners.size > 0 ? this.#formulasTouched(subUnitId, cellValue) : [];
    if (options.fromFormula) {
      this.#ahead = { before, formulas };
      return;
    }
    const known = new Set(this.#ahead?.formulas.map(({ address }) => address));
    this.#before = before && (this.#ahead?.before ?? before);
    this.#formulas = [
      ...(this.#ahead?.formulas ?? []),
      ...formulas.filter(({ address, isSame }) => !isSame && !known.has(address)),
    ];
    this.#ahead = null;
  }

  /** Cells whose formula is about to change, and what it is until then. */
  #formulasTouched(sheetId: string, cells: Cells | undefined): TouchedFormula[] {
    const matrix = this.#book.workbook.getSheetBySheetId(sheetId)?.getCellMatrix();
    const touched: TouchedFormula[] = [];
    for (const [row, inRow] of Object.entries(cells ?? {})) {
      for (const [column, cell] of Object.entries(inRow ?? {})) {
        const own = matrix?.getValue(Number(row), Number(column));
        const isFormula = Boolean(own?.f || own?.si);
        if (!cell || !("f" in cell) || (!cell.f && !isFormula)) continue;
        const place = { sheetId, row: Number(row), column: Number(column) };
        const cellAt = { ...place, book: this.#book, rowCount: 1, columnCount: 1 };
        const before = own?.f
          ? this.#book.formulas.shown(own.f, place)
          : isFormula
            ? String(readFormulas(cellAt)[0]![0])
            : "";
        touched.push({ address: rectangleAddress(cellAt), before, isSame: own?.f === cell.f });
      }
    }
    return touched;
  }

  #told(command: { id: string; params?: object }, options?: object): void {
    const params = (command.params ?? {}) as { unitId?: string; subUnitId?: string };
    const sheetId = params.subUnitId ?? "";
    if (command.id === SetRangeValuesMutation.id) {
      const written = (options ?? {}) as WriteOptions;
      if (written.applyFormulaCalculationResult) {
        const calculated = extent((command.params as { cellValue: Cells }).cellValue);
        if (calculated) this.tell({ kind: "calculated", sheetId, address: rectangleAddress(calculated) });
        return;
      }
      if (written.fromFormula) return;
      this.#cellsChanged(sheetId, (command.params as { cellValue: Cells }).cellValue);
      return;
    }
    const line = rowsAndColumns[command.id];
    // Room the engine makes for cells that move is no line that comes.
    if (line && this.#isShifting) return;
    if (line) {
      const { startRow, startColumn, endRow, endColumn } = (command.params as { range: IRange }).range;
      const byRow = line.startsWith("Row");
      this.tell({
        kind: line,
        sheetId,
        rectangle: byRow
          ? wholeRows(startRow, endRow)
          : { row: 0, rowCount: sheetRows, column: startColumn, columnCount: endColumn - startColumn + 1 },
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
    if (!rectangle || this.#isShifting) return;
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
      formulas: this.#formulas,
      ...(before && after ? { before, after } : {}),
    });
  }
}

const wholeSheet: Rectangle = { row: 0, column: 0, rowCount: sheetRows, columnCount: sheetColumns };

const wholeRows = (first: number, last: number): Rectangle => ({
  row: first,
  rowCount: last - first + 1,
  column: 0,
  columnCount: sheetColumns,
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
