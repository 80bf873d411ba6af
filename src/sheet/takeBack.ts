import { areaAddress, placeOf, quotedSheet } from "../reading/address";
import { withoutSheet } from "./areas";
import type { Anchor, CellGrid, Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import { inPortions } from "./longWork";
import { notesSupported } from "./notes";

export type TakenBack =
  /** Everything stands as before; `gone` names what the coach has removed in the meantime. */
  | { readonly kind: "takenBack"; readonly gone: readonly Gone[] }
  /** The coach has changed these cells (or notes) since; nothing was done. */
  | { readonly kind: "changedSince"; readonly cells: readonly string[] };

export type Gone = "sheet" | "table" | "chart";

/**
 * Puts back what a write changed, in four round trips for up to `cellsAtOnce` cells. Where the coach has since changed a cell that
 * would be overwritten, it does nothing and says which, unless told to go on anyway.
 */
export const takeBack = (deed: Deed, { anyway = false } = {}): Promise<TakenBack> =>
  trapHost(async () => {
    try {
      return await carryOut(deed, anyway);
    } catch {
      // Every step may be done twice: a batch that broke off half way is carried out once more from the start.
      return await carryOut(deed, anyway);
    }
  });

/** Writes; where that fails half way, takes back what was done, and lets the failure out. */
export async function writeOrTakeBack<T>(deed: Deed, write: () => Promise<T>): Promise<T> {
  try {
    return await write();
  } catch (failure) {
    // The failure of the write is what the coach is told, whatever becomes of the repair.
    await takeBack(deed, { anyway: true }).catch(() => undefined);
    throw failure;
  }
}

const carryOut = (deed: Deed, anyway: boolean): Promise<TakenBack> =>
  Excel.run(async (context): Promise<TakenBack> => {
    const present = await readPresent(context, deed);
    const standing: Standing[] = [];
    await inPortions(context, deed.steps, cellsOf, (step) => standing.push(readStanding(step, present)));
    await context.sync();
    const changed = standing.flatMap(({ changes }) => changes());
    if (changed.length > 0 && !anyway) return { kind: "changedSince", cells: changed };
    await inPortions(context, deed.steps, cellsOf, (_, index) => standing[index]!.restore());
    await context.sync();
    return { kind: "takenBack", gone: [...new Set(standing.flatMap(({ gone }) => gone()))] };
  });

/** How much of a portion a step is; a look or a note is as much to send as some plain cells. */
const cellsOf = (step: Restoration): number =>
  step.kind === "restoreCells" ? step.formulas.length * (step.formulas[0]?.length ?? 0) : 10;

type Rectangle = {
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
};

/** What of the deed's sheets, tables and settings is there now. */
type Present = {
  readonly workbook: Excel.Workbook;
  readonly sheets: ReadonlyMap<string, Excel.Worksheet>;
  readonly tables: ReadonlyMap<string, PresentTable>;
  readonly settings: ReadonlyMap<string, Excel.Setting>;
};

type PresentTable = { readonly table: Excel.Table; readonly area: Excel.Range; readonly sheet: Excel.Worksheet };

async function readPresent(context: Excel.RequestContext, deed: Deed): Promise<Present> {
  const { workbook } = context;
  workbook.worksheets.load("items/id,items/name");
  workbook.tables.load("items/id");
  const settings = new Map<string, Excel.Setting>();
  for (const step of deed.steps) {
    if ("key" in step) settings.set(step.key, workbook.settings.getItemOrNullObject(step.key).load("value"));
  }
  await context.sync();

  const wanted = new Set(deed.steps.flatMap((step) => tableOf(step) ?? []));
  const tables = new Map<string, PresentTable>();
  for (const table of workbook.tables.items) {
    if (!wanted.has(table.id)) continue;
    const area = table.getRange();
    area.load("rowIndex,columnIndex,rowCount,columnCount");
    table.worksheet.load("id,name");
    tables.set(table.id, { table, area, sheet: table.worksheet });
  }
  await context.sync();
  return { workbook, sheets: new Map(workbook.worksheets.items.map((sheet) => [sheet.id, sheet])), tables, settings };
}

const tableOf = (step: Restoration): string | undefined =>
  step.kind === "resizeTable" ? step.tableId : "anchor" in step ? step.anchor?.tableId : undefined;

/** One step against the workbook as it stands. Its parts are asked after the round trip that reads. */
type Standing = {
  /** Addresses that the coach has changed since. */
  readonly changes: () => string[];
  readonly gone: () => Gone[];
  /** Queues what puts it back. */
  readonly restore: () => void;
};

const absent = (gone: Gone): Standing => ({ changes: () => [], gone: () => [gone], restore: () => {} });
const unchecked = (restore: () => void): Standing => ({ changes: () => [], gone: () => [], restore });

function readStanding(step: Restoration, present: Present): Standing {
  switch (step.kind) {
    case "removeSheet":
      return readSheet(step, present);
    case "restoreCells":
      return readCells(step, present);
    case "restoreLook": {
      const place = placeNow(step, step.address, present);
      return place ? unchecked(() => rangeAt(place).setCellProperties(mutable(step.looks))) : absent("sheet");
    }
    case "resizeTable":
      return readTable(step, present);
    case "restoreChart":
      return readChart(step, present);
    case "restoreNote":
      return readNote(step, present);
    case "restoreSetting":
      return unchecked(() => putSetting(present, step.key, step.value));
    case "restoreEntries":
      return unchecked(() => putEntries(step, present));
  }
}

type Step<Kind extends Restoration["kind"]> = Extract<Restoration, { readonly kind: Kind }>;

function readSheet({ sheetId, written }: Step<"removeSheet">, { sheets }: Present): Standing {
  const sheet = sheets.get(sheetId);
  if (!sheet) return absent("sheet");
  const used = written ? sheet.getUsedRange().load("formulas,rowIndex,columnIndex") : null;
  return {
    changes: () => {
      if (!written || !used) return [];
      const now = { row: used.rowIndex, column: used.columnIndex, formulas: used.formulas };
      return differing(written, now).map((cell) => `${quotedSheet(sheet.name)}!${cell}`);
    },
    gone: () => [],
    restore: () => sheet.delete(),
  };
}

function readCells(step: Step<"restoreCells">, present: Present): Standing {
  const place = placeNow(step, step.address, present);
  if (!place) return absent("sheet");
  const { written, formulas, numberFormat } = step;
  const range = rangeAt(place);
  if (written) range.load("formulas");
  const grid = (cells: CellGrid) => ({ row: place.row, column: place.column, formulas: cells });
  return {
    changes: () => {
      if (!written) return [];
      // Where a batch broke off, a cell may read as before already.
      const restored = new Set(differing(grid(formulas), grid(range.formulas)));
      return differing(grid(written), grid(range.formulas))
        .filter((cell) => restored.has(cell))
        .map((cell) => `${quotedSheet(place.sheet.name)}!${cell}`);
    },
    gone: () => [],
    restore: () => {
      // The format goes first, so that text which looks like a formula stays text.
      range.numberFormat = mutable(numberFormat);
      range.formulas = mutable(formulas);
    },
  };
}

function readTable({ tableId, address, written }: Step<"resizeTable">, { tables }: Present): Standing {
  const found = tables.get(tableId);
  if (!found) return absent("table");
  const { table, area, sheet } = found;
  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const before = rectangleOf(address);
  const hasSize = (of: Rectangle) => of.rowCount === rowCount && of.columnCount === columnCount;
  return {
    changes: () =>
      written === undefined || hasSize(rectangleOf(written)) || hasSize(before)
        ? []
        : [`${quotedSheet(sheet.name)}!${areaAddress(rowIndex, columnIndex, rowCount, columnCount)}`],
    gone: () => [],
    // From where its headings stand now, should the coach have moved it.
    restore: () => table.resize(sheet.getRangeByIndexes(rowIndex, columnIndex, before.rowCount, before.columnCount)),
  };
}

function readChart(step: Step<"restoreChart">, present: Present): Standing {
  const sheet = present.sheets.get(step.sheetId);
  if (!sheet) return absent("sheet");
  const chart = sheet.charts.getItemOrNullObject(step.chart);
  chart.load("name,series/count");
  const cells = (address: string) => {
    const place = placeNow(step, address, present);
    return place && rangeAt(place);
  };
  return {
    changes: () => [],
    gone: () => (chart.isNullObject ? ["chart"] : []),
    restore: () => {
      if (chart.isNullObject) return;
      if (step.left !== undefined) chart.left = step.left;
      step.series.slice(0, chart.series.count).forEach(({ values, categories }, index) => {
        const series = chart.series.getItemAt(index);
        const [shown, named] = [cells(values), cells(categories)];
        if (shown) series.setValues(shown);
        if (named) series.setXAxisValues(named);
      });
    },
  };
}

function readNote({ sheetId, address, note, written }: Step<"restoreNote">, { sheets }: Present): Standing {
  const sheet = sheets.get(sheetId);
  if (!sheet) return absent("sheet");
  if (!notesSupported()) return unchecked(() => {});
  const standing = sheet.notes.getItemOrNullObject(address);
  standing.load("content");
  const now = () => (standing.isNullObject ? null : standing.content);
  return {
    changes: () => (now() === written || now() === note ? [] : [`${quotedSheet(sheet.name)}!${address}`]),
    gone: () => [],
    restore: () => {
      if (note === null) standing.delete();
      else if (standing.isNullObject) sheet.notes.add(address, note);
      else standing.content = note;
    },
  };
}

function putSetting({ workbook, settings }: Present, key: string, value: unknown): void {
  if (value === undefined) settings.get(key)?.delete();
  else workbook.settings.add(key, value);
}

function putEntries({ key, record, entries, existed, base }: Step<"restoreEntries">, present: Present): void {
  const setting = present.settings.get(key);
  const value = setting && !setting.isNullObject ? (setting.value as Record<string, unknown>) : base;
  if (!value) return;
  const kept = { ...(value[record] as Record<string, unknown> | undefined) };
  for (const { entry, value: before } of entries) {
    if (before === undefined) delete kept[entry];
    else kept[entry] = before;
  }
  const isEmpty = Object.keys(kept).length === 0;
  putSetting(present, key, isEmpty && !existed ? undefined : { ...value, [record]: kept });
}

type Place = Rectangle & { readonly sheet: Excel.Worksheet };

/** Where cells are to be found now: at their address, or moved with their table. Null where they are gone. */
function placeNow(
  { sheetId, anchor }: { readonly sheetId: string; readonly anchor?: Anchor },
  address: string,
  { sheets, tables }: Present,
): Place | null {
  const there = rectangleOf(address);
  const table = anchor && tables.get(anchor.tableId);
  if (anchor && table) {
    const row = there.row + table.area.rowIndex - anchor.row;
    const column = there.column + table.area.columnIndex - anchor.column;
    return row < 0 || column < 0 ? null : { ...there, row, column, sheet: table.sheet };
  }
  const sheet = sheets.get(sheetId);
  return sheet ? { ...there, sheet } : null;
}

const rangeAt = ({ sheet, row, column, rowCount, columnCount }: Place): Excel.Range =>
  sheet.getRangeByIndexes(row, column, rowCount, columnCount);

function rectangleOf(address: string): Rectangle {
  const [first = "", last = first] = withoutSheet(address).split(":");
  const from = placeOf(first);
  const to = placeOf(last);
  return { ...from, rowCount: to.row - from.row + 1, columnCount: to.column - from.column + 1 };
}

type PlacedGrid = { readonly row: number; readonly column: number; readonly formulas: CellGrid };

/** Addresses of the cells in which two grids differ; outside a grid everything is empty. */
function differing(one: PlacedGrid, other: PlacedGrid): string[] {
  const cellOf = ({ row, column, formulas }: PlacedGrid, r: number, c: number) => formulas[r - row]?.[c - column] ?? "";
  const end = ({ row, column, formulas }: PlacedGrid) => [row + formulas.length, column + (formulas[0]?.length ?? 0)];
  const [oneEnd, otherEnd] = [end(one), end(other)];
  const found: string[] = [];
  for (let r = Math.min(one.row, other.row); r < Math.max(oneEnd[0]!, otherEnd[0]!); r++) {
    for (let c = Math.min(one.column, other.column); c < Math.max(oneEnd[1]!, otherEnd[1]!); c++) {
      if (cellOf(one, r, c) !== cellOf(other, r, c)) found.push(areaAddress(r, c, 1, 1));
    }
  }
  return found;
}

const mutable = <T>(grid: readonly (readonly T[])[]): T[][] => grid.map((row) => [...row]);
