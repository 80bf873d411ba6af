import type { ICellData, IDisposable } from "@univerjs/core";
import {
  type ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  DEFAULT_TOKEN_TYPE_PARAMETER,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  type FunctionVariantType,
  IFormulaRuntimeService,
  IFunctionService,
  LexerNode,
  LexerTreeBuilder,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { quotedSheet, rectangleAddress } from "./addresses";
import type { Book } from "./book";
import { writeCells } from "./cells";
import { spellOut } from "./lineBreaks";
import { tableSection } from "./references";
import { nameOf, sheetNamed } from "./sheets";
import {
  type FormulaPlace,
  intersectionFunction,
  missingSheetFunction,
  outsideFunction,
  spillFunction,
  toEngine,
  toShown,
} from "./structuredReferences";
import { dataRows, type Table } from "./tables";

export type CellPlace = { readonly sheetId: string; readonly row: number; readonly column: number };

/** Formulas on their way into the engine's cells and back to the coach's eyes. */
export class Formulas {
  readonly #book: Book;
  readonly #listening: IDisposable;

  constructor(book: Book) {
    this.#book = book;
    book.injector
      .get(IFunctionService)
      .registerExecutors(new SpillReference(book), new Intersection(), new OutsideTableRows(), new MissingSheet());
    this.#translateAll();
    // One place for what is written from everywhere: the API, a keystroke, a paste and a repeated undo end in this mutation.
    this.#listening = book.commands.beforeCommandExecuted((command) => {
      if (command.id !== SetRangeValuesMutation.id) return;
      const { subUnitId, cellValue } = command.params as {
        subUnitId: string;
        cellValue?: Record<number, Record<number, ICellData | null>>;
      };
      const tables = book.tables.forFormulas();
      for (const [row, cells] of Object.entries(cellValue ?? {})) {
        for (const [column, cell] of Object.entries(cells ?? {})) {
          if (!cell) continue;
          spellOut(cell);
          if (!cell.f) continue;
          const place = { sheetId: subUnitId, row: Number(row), column: Number(column) };
          cell.f = toEngine(cell.f, tables, this.#placeOf(place));
        }
      }
    });
  }

  /** What the engine reads, of what was typed. */
  entered(typed: string, place: CellPlace): string {
    return toEngine(typed, this.#book.tables.forFormulas(), this.#placeOf(place));
  }

  /** What a coach sees, of what stands in a cell. A formula bar shows this. */
  shown(formula: string, place: CellPlace): string {
    return toShown(formula, this.#book.tables.forFormulas(), this.#placeOf(place));
  }

  /** Before a table becomes plain cells: formulas that name it get the addresses instead, as in Excel. */
  forget(table: Table): void {
    const { alias, columns } = this.#book.tables.forFormula(table);
    const rows = dataRows(table);
    const sheet = quotedSheet(this.#book.worksheet(table.sheetId).getName());
    const mention = new RegExp(`\\b${alias}(\\[((?:\\[[^\\]]*\\]|[^\\[\\]])*)\\])?(?![\\w])`, "g");
    const addressFor = (specifier: string, row: number): string => {
      const named = [...specifier.matchAll(/C\d+/g)].map(([name]) => columns.findIndex((c) => c.alias === name));
      const first = named.length ? Math.min(...named) : 0;
      const last = named.length ? Math.max(...named) : columns.length - 1;
      const section = /#This Row/i.test(specifier)
        ? { row, rowCount: 1 }
        : (tableSection(table, /#\w+/.exec(specifier)?.[0]?.toLowerCase() ?? "#data") ?? rows);
      if (!section) return "#REF!";
      const place = { ...section, column: table.rectangle.column + first, columnCount: last - first + 1 };
      const absolute = rectangleAddress(place).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
      return `${sheet}!${absolute}`;
    };
    for (const worksheet of this.#book.workbook.getSheets()) {
      const changed: Record<number, Record<number, ICellData>> = {};
      worksheet.getCellMatrix().forValue((row, column, cell) => {
        if (!cell?.f?.includes(alias)) return;
        const f = cell.f.replace(mention, (_whole, _brackets, specifier: string | undefined) =>
          addressFor(specifier ?? "", row),
        );
        changed[row] = { ...changed[row], [column]: { f } };
      });
      writeCells({ book: this.#book, sheetId: worksheet.getSheetId() }, changed);
    }
  }

  /**
   * Why Excel would not take what is typed as a formula, or null: text such as "=1+" or "=SUM(", and too few or too
   * many arguments for one of the add-in's functions.
   */
  faultOf(typed: string, place: CellPlace): string | null {
    const lexed = this.#book.injector.get(LexerTreeBuilder).treeBuilder(this.entered(typed, place), false);
    if (!(lexed instanceof LexerNode) || /[+\-*/^&=<>,(]\s*$/.test(typed)) return `"${typed}" is no formula.`;
    return this.#callFault(lexed);
  }

  #callFault(node: LexerNode): string | null {
    const inside = node.getChildren().filter((child) => child instanceof LexerNode);
    const given = inside.filter((child) => child.getToken() === DEFAULT_TOKEN_TYPE_PARAMETER);
    const isEmpty = given.length === 1 && given[0]?.getChildren().length === 0;
    const fault = this.#book.functions.argumentFault(node.getToken(), isEmpty ? 0 : given.length);
    if (fault) return fault;
    for (const child of inside) {
      const below = this.#callFault(child);
      if (below) return below;
    }
    return null;
  }

  dispose(): void {
    this.#listening.dispose();
  }

  #placeOf({ sheetId, row, column }: CellPlace): FormulaPlace {
    const { tables } = this.#book;
    return {
      sheetCalled: (name) => {
        const found = sheetNamed(this.#book, name);
        return found && nameOf(found);
      },
      // Asked for by few formulas, and looked up for those only.
      get table() {
        const own = tables.at(sheetId, row, column);
        return own && tables.forFormula(own);
      },
      isInRowsOf: ({ name }) => {
        const table = tables.named(name);
        const rows = table && table.sheetId === sheetId ? dataRows(table) : null;
        return rows !== null && row >= rows.row && row < rows.row + rows.rowCount;
      },
    };
  }

  /** A workbook that was just opened holds formulas as they were typed. */
  #translateAll(): void {
    for (const sheet of this.#book.workbook.getSheets()) {
      const sheetId = sheet.getSheetId();
      const changed: Record<number, Record<number, ICellData>> = {};
      sheet.getCellMatrix().forValue((row, column, cell) => {
        if (!cell?.f) return;
        const f = this.entered(cell.f, { sheetId, row, column });
        if (f === cell.f) return;
        changed[row] = { ...changed[row], [column]: { f } };
      });
      if (Object.keys(changed).length === 0) continue;
      this.#book.run(SetRangeValuesMutation.id, { unitId: this.#book.id, subUnitId: sheetId, cellValue: changed });
    }
  }
}

/** `G1#`: all cells a formula spilled into. */
class SpillReference extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;
  readonly #book: Book;

  constructor(book: Book) {
    super(spillFunction);
    this.#book = book;
  }

  override calculate(anchor: FunctionVariantType): FunctionVariantType {
    if (!anchor.isReferenceObject()) return ErrorValueObject.create(ErrorType.REF);
    const reference = anchor as BaseReferenceObject;
    const { startRow, startColumn } = reference.getRangePosition();
    const unit = reference.getUnitId();
    const sheet = reference.getSheetId();
    const now = this.#book.injector.get(IFormulaRuntimeService).getUnitArrayFormula()[unit]?.[sheet];
    const before = this.#book.injector.get(FormulaDataModel).getArrayFormulaRange()[unit]?.[sheet];
    const spilled = now?.[startRow]?.[startColumn] ?? before?.[startRow]?.[startColumn];
    if (!spilled) return ErrorValueObject.create(ErrorType.REF);
    reference.setRangeData({ ...spilled });
    return reference;
  }
}

/** `@A1:A9`: the cell of the range in the formula's own row or column; of several results, the first. */
class Intersection extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  constructor() {
    super(intersectionFunction);
  }

  override calculate(given: FunctionVariantType): FunctionVariantType {
    if (!given.isReferenceObject()) {
      const value = given as BaseValueObject;
      return value.isArray()
        ? ((value as ArrayValueObject).getFirstCell() ?? ErrorValueObject.create(ErrorType.VALUE))
        : value;
    }
    const reference = given as BaseReferenceObject;
    const { startRow, endRow, startColumn, endColumn } = reference.getRangePosition();
    const cells = reference.toArrayValueObject();
    const row = startRow === endRow ? 0 : this.row - startRow;
    const column = startColumn === endColumn ? 0 : this.column - startColumn;
    return cells.get(row, column) ?? ErrorValueObject.create(ErrorType.VALUE);
  }
}

/** `Table[@Column]` in a row that is none of the table's: #VALUE!. */
class OutsideTableRows extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  constructor() {
    super(outsideFunction);
  }

  override calculate(): FunctionVariantType {
    return ErrorValueObject.create(ErrorType.VALUE);
  }
}

/** A reference to a sheet there is not: #REF!. */
class MissingSheet extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;

  constructor() {
    super(missingSheetFunction);
  }

  override calculate(): FunctionVariantType {
    return ErrorValueObject.create(ErrorType.REF);
  }
}
