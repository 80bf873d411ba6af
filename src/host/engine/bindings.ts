import type { Area } from "./area";
import type { Book } from "./book";
import type { Change } from "./changes";

/** A part of the workbook an add-in keeps a hold of by an id of its own. */
export type Binding = {
  readonly id: string;
  readonly type: "Range" | "Table" | "Text";
  /** The bound table, whose place is wherever it is now. */
  readonly tableId: string | null;
  /** The bound cells; null once they are deleted. */
  readonly area: Area | null;
};

/** The bindings of the workbook, in the order they were made. They follow whole rows and columns that come and go. */
export class Bindings {
  readonly #book: Book;
  #bindings: readonly Binding[] = [];
  #isFollowing = false;

  constructor(book: Book) {
    this.#book = book;
  }

  list(): readonly Binding[] {
    return this.#bindings;
  }

  get(id: string): Binding | null {
    return this.#bindings.find((binding) => binding.id === id) ?? null;
  }

  /** Binds; who is bound by this id already is bound anew. */
  add(binding: Binding): void {
    this.#follow();
    this.#bindings = [...this.#bindings.filter(({ id }) => id !== binding.id), binding];
  }

  remove(id: string): void {
    this.#bindings = this.#bindings.filter((binding) => binding.id !== id);
  }

  /** The cells of a binding now. */
  areaOf({ tableId, area }: Binding): Area | null {
    if (tableId === null) return area;
    const table = this.#book.tables.get(tableId);
    return table && { book: this.#book, sheetId: table.sheetId, ...table.rectangle };
  }

  /** Begins with the first binding: while nobody listens, a change costs less. */
  #follow(): void {
    if (this.#isFollowing) return;
    this.#isFollowing = true;
    this.#book.changes.listen((change) => {
      this.#bindings = this.#bindings.map((binding) =>
        binding.area ? { ...binding, area: shifted(binding.area, change) } : binding,
      );
    });
  }
}

/** Where an area is after rows or columns came or went. */
function shifted(area: Area, change: Change): Area | null {
  if (!("rectangle" in change) || change.sheetId !== area.sheetId) return area;
  switch (change.kind) {
    case "RowInserted":
    case "RowDeleted": {
      const sign = change.kind === "RowInserted" ? 1 : -1;
      const [row, rowCount] = moved(area.row, area.rowCount, change.rectangle.row, change.rectangle.rowCount * sign);
      return rowCount > 0 ? { ...area, row, rowCount } : null;
    }
    case "ColumnInserted":
    case "ColumnDeleted": {
      const sign = change.kind === "ColumnInserted" ? 1 : -1;
      const { column: at, columnCount: by } = change.rectangle;
      const [column, columnCount] = moved(area.column, area.columnCount, at, by * sign);
      return columnCount > 0 ? { ...area, column, columnCount } : null;
    }
    default:
      return area;
  }
}

/** Lines `start` .. after `by` lines were put in at `at`, or, where negative, taken out from there. */
function moved(start: number, count: number, at: number, by: number): [start: number, count: number] {
  if (by > 0) {
    if (at <= start) return [start + by, count];
    return [start, at < start + count ? count + by : count];
  }
  const removedEnd = at - by;
  const before = Math.max(0, Math.min(start, removedEnd) - at);
  const inside = Math.max(0, Math.min(start + count, removedEnd) - Math.max(start, at));
  return [start - before, count - inside];
}
