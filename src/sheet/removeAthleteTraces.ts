import { say } from "../language/say";
import { addressOf, quotedSheet } from "../reading/address";
import { columnMapsSetting, noColumnMaps, parseColumnMaps } from "../store/columnMaps";
import { diaryTable } from "../store/diary";
import { entrySheetsSetting, noEntrySheets, parseEntrySheets } from "../store/entrySheets";
import { resultsTable } from "../store/keptResults";
import { marksSetting, noMarks, parseMarks } from "../store/marks";
import { planTable } from "../store/planTable";
import { prioritiesTable } from "../store/priorityTable";
import {
  findTable,
  noRememberedTables,
  parseRememberedTables,
  rememberedTablesSetting,
} from "../store/rememberedTables";
import { isSameName } from "../store/sameName";
import { squadTable } from "../store/squad";
import {
  noWrittenReports,
  parseWrittenReports,
  type WrittenReports,
  writtenReportsSetting,
} from "../store/writtenReports";
import { withoutSheet } from "./areas";
import { HostRefusal } from "./hostRefusal";
import { cellsAtOnce } from "./longWork";
import { notesSupported } from "./notes";
import { pageProperty } from "./writePages";

/** Where an athlete's name stands in the workbook, and what of it is ours to remove. */
export type Traces = {
  /** Rows of tables that are ours, in each table that has some; offsets are from the sheet's first row. */
  readonly tables: readonly { readonly table: Excel.Table; readonly sheet: string; readonly rows: readonly number[] }[];
  /** Sentences of ours around a written table that name the athlete. */
  readonly lines: readonly {
    readonly sheet: Excel.Worksheet;
    readonly row: number;
    readonly column: number;
    readonly text: string;
  }[];
  /** Pages of ours that are about the athlete, or name them among others. */
  readonly pages: readonly Excel.Worksheet[];
  /** Whether a mark of ours names the athlete in its note. */
  readonly isMarked: boolean;
  /** What we remember in settings, as it stands and as it is to be. */
  readonly settings: readonly { readonly key: string; readonly before: unknown; readonly after: unknown }[];
  /** Addresses of cells, notes and names of sheets that are the coach's and name the athlete. */
  readonly elsewhere: readonly string[];
};

/** Whether words name the athlete: the name by itself, or within a sentence. */
function nameFinder(name: string): (words: unknown) => boolean {
  const letters = name
    .trim()
    .replace(/[.*+?^${}()|[\]\\]/g, "\\$&")
    .replace(/\s+/g, "\\s+");
  const within = new RegExp(`(?<![\\p{L}\\p{N}])${letters}(?![\\p{L}\\p{N}])`, "iu");
  return (words) => typeof words === "string" && (isSameName(words, name) || within.test(words));
}

/** Reads the whole workbook for a name: three round trips, and more only beyond `cellsAtOnce` cells. */
export async function findTraces(context: Excel.RequestContext, name: string): Promise<Traces> {
  const names = nameFinder(name);
  const { workbook } = context;
  const keys = [writtenReportsSetting, entrySheetsSetting, marksSetting, columnMapsSetting, rememberedTablesSetting];
  const loaded = keys.map((key) => workbook.settings.getItemOrNullObject(key).load("value"));
  const pages = workbook.worksheets.load("items/id,items/name");
  workbook.tables.load("items/id,items/name,items/showTotals");
  await context.sync();
  const stored = loaded.map((setting) => (setting.isNullObject ? undefined : (setting.value as unknown)));
  const reports = known(stored[0], noWrittenReports, parseWrittenReports);
  const entrySheets = known(stored[1], noEntrySheets, parseEntrySheets);
  const marks = known(stored[2], noMarks, parseMarks);
  const columnMaps = known(stored[3], noColumnMaps, parseColumnMaps);
  const remembered = known(stored[4], noRememberedTables, parseRememberedTables);

  const sheets = pages.items.map((sheet) => ({
    sheet,
    property: sheet.customProperties.getItemOrNullObject(pageProperty).load("value"),
    used: sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount"),
    notes: notesSupported() ? sheet.notes.load("items/content") : null,
  }));
  const areas = workbook.tables.items.map((table) => {
    table.worksheet.load("id");
    return { table, area: table.getRange().load("rowIndex,columnIndex,rowCount,columnCount") };
  });
  await context.sync();

  const values = await readCells(
    context,
    sheets.map(({ used }) => used),
  );
  const noted = sheets.map(({ sheet, notes }) =>
    (notes?.items ?? [])
      .filter(({ content }) => names(content))
      .map((note) => ({ sheet, content: note.content, place: note.getLocation().load("address") })),
  );
  if (noted.flat().length > 0) await context.sync();

  const ours = new Set([
    ...tablesOfAthletes.flatMap((table) => findTable(table, remembered, workbook.tables.items)?.id ?? []),
    ...Object.values(reports.reports).map(({ tableId }) => tableId),
    ...Object.values(entrySheets.sheets).map(({ tableId }) => tableId),
  ]);
  const linesOfSheet = new Map<string, Set<string>>();
  for (const { sheetId, head, foot } of Object.values(reports.reports)) {
    const lines = linesOfSheet.get(sheetId) ?? new Set();
    for (const line of [...head, ...foot]) if (line !== null) lines.add(line);
    linesOfSheet.set(sheetId, lines);
  }

  const tables = new Map<
    Excel.Table,
    { readonly table: Excel.Table; readonly sheet: string; readonly rows: Set<number> }
  >();
  const found = { lines: [] as Traces["lines"][number][], pages: [] as Excel.Worksheet[], elsewhere: [] as string[] };
  sheets.forEach(({ sheet, property, used }, index) => {
    if (used.isNullObject) {
      if (names(sheet.name)) found.elsewhere.push(quotedSheet(sheet.name));
      return;
    }
    const cells = values[index]!;
    const isOurPage = !property.isNullObject;
    if (isOurPage && (names(sheet.name) || cells.flat().some(names))) {
      found.pages.push(sheet);
      return;
    }
    if (names(sheet.name)) found.elsewhere.push(quotedSheet(sheet.name));
    cells.forEach((line, r) => {
      line.forEach((value, c) => {
        if (!names(value)) return;
        const [row, column] = [used.rowIndex + r, used.columnIndex + c];
        const home = areas.find(
          ({ table, area }) =>
            ours.has(table.id) && table.worksheet.id === sheet.id && isInBody(table, area, row, column),
        );
        if (home && isWhose(String(value), name)) {
          const entry = tables.get(home.table) ?? { table: home.table, sheet: sheet.name, rows: new Set<number>() };
          tables.set(home.table, { ...entry, rows: entry.rows.add(row) });
        } else if (linesOfSheet.get(sheet.id)?.has(String(value))) {
          found.lines.push({ sheet, row, column, text: String(value) });
        } else {
          const cell = addressOf({ firstRow: used.rowIndex, firstColumn: used.columnIndex }, r, c);
          found.elsewhere.push(`${quotedSheet(sheet.name)}!${cell}`);
        }
      });
    });
  });

  const inRow = (sheet: string, address: string) =>
    [...tables.values()].some((one) => one.sheet === sheet && one.rows.has(Number(/\d+$/.exec(address)?.[0]) - 1));
  const isMarked = Object.values(marks.marks).some(({ said }) => names(said));
  const saidByUs = Object.values(marks.marks).flatMap(({ said }) => said ?? []);
  for (const { sheet, content, place } of noted.flat()) {
    const address = withoutSheet(place.address);
    const isOurs = saidByUs.some((said) => content.includes(said) && names(said) && !names(content.replace(said, "")));
    if (!isOurs && !inRow(sheet.name, address)) found.elsewhere.push(say`${quotedSheet(sheet.name)}!${address} (note)`);
  }
  const rowsOfNobodyElse = new Set(
    [...tables.values()].flatMap(({ sheet, rows }) => [...rows].map((row) => `${quotedSheet(sheet)}|${row}`)),
  );
  return {
    tables: [...tables.values()].map((one) => ({ ...one, rows: [...one.rows].sort((a, b) => a - b) })),
    lines: found.lines,
    pages: found.pages,
    isMarked,
    settings: [
      { key: writtenReportsSetting, before: stored[0], after: withoutLines(reports, names) },
      {
        key: columnMapsSetting,
        before: stored[3],
        after: {
          ...columnMaps,
          maps: columnMaps.maps.map((one) => ({
            ...one,
            map: { ...one.map, sameAthlete: withoutEntries(one.map.sameAthlete, names) },
          })),
        },
      },
    ].filter(({ before, after }) => before !== undefined && JSON.stringify(before) !== JSON.stringify(after)),
    // What else of a removed row names the athlete goes with the row.
    elsewhere: found.elsewhere.filter((place) => {
      const at = /^(.*)!([A-Z]+)(\d+)$/.exec(place);
      return !at || !rowsOfNobodyElse.has(`${at[1]}|${Number(at[3]) - 1}`);
    }),
  };
}

/** A cell that is the athlete's name, or begins with it as the row of a list does ("Ane Berg: Hop"). */
const isWhose = (words: string, name: string): boolean =>
  isSameName(words, name) || isSameName(words.slice(0, words.indexOf(": ") + 1), `${name}:`);

const isInBody = (table: Excel.Table, area: Excel.Range, row: number, column: number): boolean =>
  row > area.rowIndex &&
  row < area.rowIndex + area.rowCount - (table.showTotals ? 1 : 0) &&
  column >= area.columnIndex &&
  column < area.columnIndex + area.columnCount;

function known<Stored>(stored: unknown, nothing: Stored, parse: (stored: unknown) => Stored | null): Stored {
  const parsed = stored === undefined ? nothing : parse(stored);
  if (parsed !== null) return parsed;
  throw new HostRefusal(
    "UnknownState",
    say`What is remembered in this workbook was written by a newer version of the add-in.`,
  );
}

/** Values of the used cells of each sheet, in portions that the program takes. */
async function readCells(context: Excel.RequestContext, areas: readonly Excel.Range[]): Promise<unknown[][][]> {
  const portions = areas.map((area) => {
    if (area.isNullObject) return [];
    const rows = Math.max(1, Math.floor(cellsAtOnce / area.columnCount));
    return Array.from({ length: Math.ceil(area.rowCount / rows) }, (_, at) => {
      const rowCount = Math.min(rows, area.rowCount - at * rows);
      return area.getCell(at * rows, 0).getResizedRange(rowCount - 1, area.columnCount - 1);
    });
  });
  let cells = 0;
  for (const [index, area] of areas.entries()) {
    for (const portion of portions[index]!) {
      if (cells > 5 * cellsAtOnce) {
        await context.sync();
        cells = 0;
      }
      portion.load("values");
      cells += Math.min(cellsAtOnce, area.rowCount * area.columnCount);
    }
  }
  await context.sync();
  return portions.map((ofSheet) => ofSheet.flatMap(({ values }) => values as unknown[][]));
}

function withoutLines(stored: WrittenReports, names: (words: unknown) => boolean): WrittenReports {
  const kept = <Line extends string | null>(lines: readonly Line[]) =>
    lines.map((line) => (names(line) ? ("" as Line) : line));
  return {
    ...stored,
    reports: Object.fromEntries(
      Object.entries(stored.reports).map(([key, report]) => [
        key,
        { ...report, head: kept(report.head), foot: kept(report.foot) },
      ]),
    ),
  };
}

const withoutEntries = (record: Readonly<Record<string, string>>, names: (words: unknown) => boolean) =>
  Object.fromEntries(Object.entries(record).filter((entry) => !entry.some(names)));

/** Tables of ours with a row for an athlete. */
const tablesOfAthletes = [squadTable, resultsTable, prioritiesTable, planTable, diaryTable];
