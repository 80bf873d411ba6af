import { say } from "../language/say";
import { addressOf } from "../reading/address";
import { type Cell, textOf } from "../reading/grid";
import type { CellSchema } from "./cellSchemas";
import { isWording } from "./sameName";

export const storeTableIds = [
  "squad",
  "battery",
  "weights",
  "results",
  "exercises",
  "priorities",
  "plan",
  "diary",
] as const;
export type StoreTableId = (typeof storeTableIds)[number];

/** One column of a table of ours: how it looks, what it means, how its cells are read and written. */
export type StoreColumn<Value, Row> = {
  readonly heading: string;
  /** One or two sentences for the coach, shown when the heading is selected. */
  readonly meaning: string;
  /** Number format; "@" keeps words as words, also where they begin with "=". */
  readonly format: string;
  /** Width in characters. */
  readonly width: number;
  /** Words offered in a list. */
  readonly choices?: readonly string[];
  /** "filled": an empty or unreadable cell leaves the row out. "readable": only an unreadable one does. */
  readonly need?: "filled" | "readable";
  readonly cell: CellSchema<NonNullable<Value>>;
  /** What an empty cell stands for, given the columns before it. */
  readonly absent: (row: Partial<Row>) => Value;
  readonly write: (value: Value) => number | string | null;
};

/** A table of the workbook that is ours and that the coach edits by hand. */
export type StoreTable<Row> = {
  readonly id: StoreTableId;
  /** Name of the table; the workbook's memory of its identity comes first. */
  readonly name: string;
  readonly sheet: string;
  /** The two lines above the table. */
  readonly title: string;
  readonly use: string;
  /** In their order from left to right, by the row's field. */
  readonly columns: { readonly [Field in keyof Row & string]: StoreColumn<Row[Field], Row> };
  /** How all columns are read whose headings the coach gives, where those belong to the table (roles of the weights). */
  readonly further?: Omit<StoreColumn<number | null, Row>, "heading">;
  /** What may stand once only, and how it is called; null where that is not asked of the row. */
  readonly once: (row: Row) => { readonly key: string; readonly called: string } | null;
};

/** A table as it stands in the workbook. */
export type TableCells = {
  readonly sheet: string;
  readonly headings: readonly string[];
  /** Zero-based row of the first row of data, and column of the table, on the sheet. */
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly body: readonly (readonly Cell[])[];
};

/** Something in a table of ours that could not be read as it stands. */
export type StoreRemark = { readonly sheet: string; readonly cell: string; readonly why: string };

export type ReadRow<Row> = {
  readonly row: Row;
  /** Offset from the table's first row of data. */
  readonly offset: number;
  /** Numbers of the columns with headings of the coach. */
  readonly further: readonly { readonly heading: string; readonly value: number }[];
};

export type StoreReading<Row> = { readonly rows: readonly ReadRow<Row>[]; readonly remarks: readonly StoreRemark[] };

/** Offset of each of our columns in the table, by its heading in any case and language; null where there is none. */
export const columnOffsets = <Row>(
  table: StoreTable<Row>,
  headings: readonly string[],
): { readonly [Field in keyof Row & string]: number | null } => {
  const place = (ours: string) => {
    const offset = headings.findIndex((heading) => isWording(heading, ours));
    return offset < 0 ? null : offset;
  };
  return Object.fromEntries(columnsOf(table).map(([field, { heading }]) => [field, place(heading)])) as {
    [Field in keyof Row & string]: number | null;
  };
};

type AnyColumn<Row> = StoreColumn<Row[keyof Row & string], Row>;

/** The columns in their order, each with its field. */
export const columnsOf = <Row>(table: StoreTable<Row>): [keyof Row & string, AnyColumn<Row>][] =>
  Object.entries(table.columns) as [keyof Row & string, AnyColumn<Row>][];

/**
 * The rows of a table of ours. Blank rows are passed over. A cell that cannot be read is told, with what is needed; the
 * row goes on without it, unless the row means nothing, or something else, without it.
 */
export function readStoreTable<Row>(table: StoreTable<Row>, cells: TableCells): StoreReading<Row> {
  const remarks: StoreRemark[] = [];
  const remark = (offset: number, column: number, why: string) => {
    remarks.push({ sheet: cells.sheet, cell: addressOf(cells, offset, column), why });
  };
  const columns = columnsOf(table);
  const offsets = columnOffsets(table, cells.headings);
  let readable = true;
  for (const [field, { heading, need }] of columns) {
    if (offsets[field] !== null) continue;
    readable &&= need !== "filled";
    remark(-1, 0, say`No column is headed “${heading}”${need === "filled" ? say`; no row can be read` : ""}.`);
  }
  if (!readable) return { rows: [], remarks };

  const own = furtherColumns(table, cells);
  const used = [...columns.flatMap(([field]) => offsets[field] ?? []), ...own.map(({ column }) => column)];
  const rows: ReadRow<Row>[] = [];
  const firstAt = new Map<string, string>();
  cells.body.forEach((line, offset) => {
    if (used.every((column) => isBlank(line[column] ?? null))) return;
    const row: Partial<Row> = {};
    for (const [field, definition] of columns) {
      const column = offsets[field];
      const read = readCell(definition, column === null ? null : (line[column] ?? null));
      if (read.why !== null) remark(offset, column ?? 0, read.why);
      if (read.leavesOut) return;
      row[field] = read.value ?? definition.absent(row);
    }
    const complete = row as Row;
    const once = table.once(complete);
    if (once !== null) {
      const nameColumn = offsets[columns.find(([, { need }]) => need === "filled")![0]]!;
      const first = firstAt.get(once.key);
      if (first !== undefined) {
        remark(offset, nameColumn, say`${once.called} also stands in ${first}; only the first row counts.`);
        return;
      }
      firstAt.set(once.key, addressOf(cells, offset, nameColumn));
    }
    const further = own.flatMap(({ heading, column }) => {
      const read = table.further!.cell.safeParse(line[column] ?? null);
      if (!read.success) remark(offset, column, read.error.issues[0]!.message);
      return read.success && read.data !== null ? [{ heading, value: read.data }] : [];
    });
    rows.push({ row: complete, offset, further });
  });
  return { rows, remarks };
}

const isBlank = (cell: Cell): boolean => cell === null || (typeof cell === "string" && textOf(cell) === "");

type CellReading<Value> = { readonly value: Value | null; readonly why: string | null; readonly leavesOut: boolean };

function readCell<Value, Row>({ cell, heading, need }: StoreColumn<Value, Row>, found: Cell): CellReading<Value> {
  const read = cell.safeParse(found);
  if (!read.success) {
    const gone = need === undefined ? "" : say` The row was left out.`;
    return { value: null, why: `${read.error.issues[0]!.message}${gone}`, leavesOut: need !== undefined };
  }
  if (read.data === null && need === "filled") {
    return { value: null, why: say`Nothing stands under “${heading}”; the row was left out.`, leavesOut: true };
  }
  return { value: read.data, why: null, leavesOut: false };
}

/** Columns headed by the coach that hold numbers; a column of words alone is a note of theirs. */
function furtherColumns<Row>({ columns, further }: StoreTable<Row>, { headings, body }: TableCells) {
  if (!further) return [];
  const ours = (Object.values(columns) as { heading: string }[]).map(({ heading }) => heading);
  return headings
    .map((heading, column) => ({ heading: heading.trim(), column }))
    .filter(
      ({ heading, column }) =>
        !ours.some((our) => isWording(heading, our)) && body.some((line) => typeof line[column] === "number"),
    );
}
