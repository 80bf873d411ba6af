import { say } from "../language/say";
import { areaAddress } from "../reading/address";
import { restoreCells } from "./beforeImage";
import type { Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import { clearMarks } from "./marks";
import { findTraces, type Traces } from "./removeAthleteTraces";
import { imageOf, readTables, rowsAtOnce, type StandingTable } from "./storeTables";
import { writeOrTakeBack } from "./takeBack";

/** What stands of an athlete in the workbook, in numbers and places for the coach to read. */
export type AthleteFound = {
  /** Rows in each of our tables that has some. */
  readonly tables: readonly { readonly sheet: string; readonly rows: number }[];
  /** Sentences of ours on written sheets. */
  readonly lines: number;
  /** Sheets of pages that are removed, and not brought back. */
  readonly pages: readonly string[];
  /** Whether our marks are cleared, since one of them names the athlete. */
  readonly marks: boolean;
  /** Where the name stands in what is the coach's own: these places are left as they are. */
  readonly elsewhere: readonly string[];
};

export type AthleteRemoved = AthleteFound & { readonly deed: Deed };

/** Looks for an athlete in the whole workbook, and changes nothing. */
export const findAthlete = (name: string): Promise<AthleteFound> =>
  trapHost(() => Excel.run(async (context) => told(await findTraces(context, name))));

/**
 * Removes an athlete from everything in the workbook that is ours: rows of the tables (with what the coach has written
 * beside them in the same row), rows and sentences of written answers, pages, marks, and what settings remember. The
 * coach's own sheets are left alone, and told. All of it can be taken back, but for the pages, which are made anew in
 * one press. Where the program fails half way, the workbook is as before; the pages go last.
 */
export const removeAthlete = (name: string): Promise<AthleteRemoved> =>
  trapHost(() =>
    Excel.run(async (context): Promise<AthleteRemoved> => {
      const traces = await findTraces(context, name);
      const standing = await readTables(
        context,
        traces.tables.map(({ table }) => table),
        "before",
      );
      const closed = standing.map((table, index) => closeUp(table, new Set(traces.tables[index]!.rows)));
      // All has been read by now: from here on, what fails is taken back.
      const marked = traces.isMarked ? (await clearMarks()).deed.steps : [];
      const steps: Restoration[] = [
        ...closed.flatMap(({ steps }) => steps),
        ...traces.lines.map(
          ({ sheet, row, column, text }): Restoration => ({
            kind: "restoreCells",
            sheetId: sheet.id,
            address: areaAddress(row, column, 1, 1),
            formulas: [[text]],
            numberFormat: [["@"]],
            written: [[""]],
          }),
        ),
        ...traces.settings.map(({ key, before }): Restoration => ({ kind: "restoreSetting", key, value: before })),
        ...marked,
      ];
      const deed: Deed = { what: say`Removed ${name} from ${many(closed.length, "table")}.`, steps };
      await writeOrTakeBack(deed, async () => {
        for (const { write } of closed) await write(context);
        for (const { sheet, row, column } of traces.lines) {
          sheet.getRangeByIndexes(row, column, 1, 1).clear("Contents");
        }
        for (const { key, after } of traces.settings) context.workbook.settings.add(key, after);
        for (const page of traces.pages) page.delete();
        await context.sync();
      });
      return { ...told(traces), deed };
    }),
  );

const told = ({ tables, lines, pages, isMarked, elsewhere }: Traces): AthleteFound => ({
  tables: tables.map(({ sheet, rows }) => ({ sheet, rows: rows.length })),
  lines: lines.length,
  pages: pages.map(({ name }) => name),
  marks: isMarked,
  elsewhere,
});

type ClosedUp = {
  readonly steps: readonly Restoration[];
  readonly write: (context: Excel.RequestContext) => Promise<void>;
};

/**
 * A table without some of its rows: those below move up, and the table ends that much earlier. Formulas move as they do
 * where a person cuts rows out: they keep to their own row. A table with a row of totals keeps its length, with the
 * rows empty.
 */
function closeUp(standing: StandingTable, removed: ReadonlySet<number>): ClosedUp {
  const { table, sheet, cells, area, hasTotals } = standing;
  const { firstRow, body } = cells;
  const whole = restoreCells(imageOf(standing), firstRow, area.column, body.length, area.columnCount);
  const kept = body.flatMap((_, offset) => (removed.has(firstRow + offset) ? [] : [offset]));
  const order = hasTotals ? body.map((_, offset) => (removed.has(firstRow + offset) ? null : offset)) : kept;
  const rows = body.map((_, place) => order[place] ?? null);
  const formulas = rows.map((offset, place) =>
    offset === null
      ? Array<unknown>(area.columnCount).fill("")
      : whole.formulas[offset]!.map((formula) => movedUp(formula, offset - place, firstRow + offset)),
  );
  const formats = rows.map((offset, place) => whole.numberFormat[offset ?? place]!);
  const length = hasTotals ? body.length : Math.max(kept.length, 1);
  const address = (rowCount: number) => areaAddress(area.row, area.column, rowCount, area.columnCount);
  const shorter = area.rowCount - body.length + length;
  return {
    steps: [
      { ...whole, written: formulas.map((line) => line.map(withoutApostrophe)) },
      ...(shorter === area.rowCount
        ? []
        : [
            {
              kind: "resizeTable" as const,
              ...{ tableId: table.id, sheetId: sheet.id, address: address(area.rowCount), written: address(shorter) },
            },
          ]),
    ],
    write: async (context) => {
      for (let done = 0; done < rows.length; done += rowsAtOnce) {
        if (done > 0) await context.sync();
        const count = Math.min(rowsAtOnce, rows.length - done);
        const range = sheet.getRangeByIndexes(firstRow + done, area.column, count, area.columnCount);
        range.numberFormat = formats.slice(done, done + count).map((line) => [...line]);
        range.formulas = formulas.slice(done, done + count);
      }
      if (shorter !== area.rowCount) {
        table.resize(sheet.getRangeByIndexes(area.row, area.column, shorter, area.columnCount));
      }
    },
  };
}

/** A formula that moves up keeps to its own row: references to the row it stood in, without a "$", move with it. */
function movedUp(formula: unknown, by: number, row: number): unknown {
  if (by === 0 || typeof formula !== "string" || !formula.startsWith("=")) return formula;
  return formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) =>
      index % 2 === 1
        ? part
        : part.replace(
            /(?<![A-Za-z0-9_.$![])(\$?[A-Z]{1,3})(\d+)(?![A-Za-z0-9_(])/g,
            (whole, letters: string, digits: string) =>
              Number(digits) === row + 1 ? `${letters}${row + 1 - by}` : whole,
          ),
    )
    .join("");
}

/** What a cell reads after a text was written with the apostrophe that keeps it one. */
const withoutApostrophe = (formula: unknown): unknown =>
  typeof formula === "string" && formula.startsWith("'") ? formula.slice(1) : formula;

const many = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? "" : "s"}`;
