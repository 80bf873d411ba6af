import { SetRowHiddenCommand, SetSpecificRowsVisibleCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import type { Book } from "./book";
import { readText, readValues } from "./cells";

/** Whether a row stays visible by what stands in the filtered column: its text and its value. */
export type RowTest = (text: string, value: unknown, all: readonly unknown[]) => boolean;

type Filter = {
  /** The filtered rows, without their headings, as they are now. */
  readonly area: () => Area;
  readonly tests: Map<number, { readonly test: RowTest; readonly criteria: unknown }>;
  hidden: number[];
};

/** Filters of tables and sheets. A filtered-out row is a hidden row. */
export class Filters {
  readonly #book: Book;
  readonly #filters = new Map<string, Filter>();

  constructor(book: Book) {
    this.#book = book;
  }

  /** Begins a filter without criteria, or leaves the one that is there. */
  open(key: string, area: () => Area): void {
    if (!this.#filters.has(key)) this.#filters.set(key, { area, tests: new Map(), hidden: [] });
  }

  isOpen(key: string): boolean {
    return this.#filters.has(key);
  }

  areaOf(key: string): Area | null {
    return this.#filters.get(key)?.area() ?? null;
  }

  criteriaOf(key: string, column: number): unknown {
    return this.#filters.get(key)?.tests.get(column)?.criteria ?? null;
  }

  isFiltered(key: string): boolean {
    return (this.#filters.get(key)?.tests.size ?? 0) > 0;
  }

  set(key: string, column: number, test: RowTest, criteria: unknown): void {
    this.#filters.get(key)?.tests.set(column, { test, criteria });
    this.reapply(key);
  }

  /** Takes away the criteria of one column, or of all. */
  clear(key: string, column?: number): void {
    const filter = this.#filters.get(key);
    if (!filter) return;
    if (column === undefined) filter.tests.clear();
    else filter.tests.delete(column);
    this.reapply(key);
  }

  close(key: string): void {
    this.clear(key);
    this.#filters.delete(key);
  }

  reapply(key: string): void {
    const filter = this.#filters.get(key);
    if (!filter) return;
    const area = filter.area();
    const place = { unitId: this.#book.id, subUnitId: area.sheetId };
    const ranges = (rows: readonly number[]) =>
      rows.map((row) => ({ startRow: row, endRow: row, startColumn: 0, endColumn: 0 }));
    if (filter.hidden.length) {
      this.#book.commands.syncExecuteCommand(SetSpecificRowsVisibleCommand.id, {
        ...place,
        ranges: ranges(filter.hidden),
      });
    }
    const values = readValues(area);
    const text = readText(area);
    filter.hidden = values.flatMap((row, index) => {
      const stays = [...filter.tests].every(([column, { test }]) =>
        test(
          text[index]![column]!,
          row[column],
          values.map((other) => other[column]),
        ),
      );
      return stays ? [] : [area.row + index];
    });
    if (filter.hidden.length) {
      this.#book.commands.syncExecuteCommand(SetRowHiddenCommand.id, { ...place, ranges: ranges(filter.hidden) });
    }
  }
}
