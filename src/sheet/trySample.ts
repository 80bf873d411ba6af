import { say } from "../language/say";
import { areaAddress } from "../reading/address";
import { columnMapsSetting, parseColumnMaps } from "../store/columnMaps";
import { marksSetting, parseMarks } from "../store/marks";
import { parseTrySample, type TrySample, tryHeadings, tryRows, trySampleSetting, trySheet } from "../store/trySample";
import { parseWrittenReports, type WrittenReport, writtenReportsSetting } from "../store/writtenReports";
import { splitAreas } from "./areas";
import { freeName } from "./createTable";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";
import { styleHeader, styleLines } from "./tableLook";

/** Title, line of use, and a blank row stand above the headings. */
const headerRow = 3;

/** The sample as it stands in the workbook. */
export type StandingSample = {
  /** Name of the sheet with the results, and the address to select on it. */
  readonly sheet: string;
  readonly address: string;
  /** The sheets that answers about the sample were written to. */
  readonly answers: readonly string[];
};

/**
 * Puts a sample squad's results on a sheet of its own and selects them. Three round trips; where one fails, the sheet
 * is removed.
 */
export const startTrySample = (): Promise<{ readonly deed: Deed }> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const { worksheets, settings } = context.workbook;
      worksheets.load("items/name");
      settings.load("items/key");
      const active = worksheets.getActiveWorksheet().load("id");
      const selected = context.workbook.getSelectedRanges().load("address");
      await context.sync();

      const names = worksheets.items.map(({ name }) => name);
      const sheet = worksheets.add(freeName(trySheet.name, " ", names)).load("id,name");
      await context.sync();
      try {
        fill(sheet);
        const remembered: TrySample = {
          version: 1,
          sheetId: sheet.id,
          // What is selected may be in pieces, what we select is one.
          before: { sheetId: active.id, address: splitAreas(selected.address)[0] ?? "A1" },
          settings: settings.items.map(({ key }) => key),
        };
        settings.add(trySampleSetting, remembered);
        await context.sync();
      } catch (failure) {
        sheet.delete();
        await context.sync();
        throw failure;
      }
      const steps: Deed["steps"] = [
        { kind: "removeSheet", sheetId: sheet.id },
        { kind: "restoreSetting", key: trySampleSetting, value: undefined },
      ];
      return { deed: { what: say`Made “${sheet.name}”`, steps } };
    }),
  );

/** The sample that stands in the workbook; null where there is none. One round trip. */
export const findTrySample = (): Promise<StandingSample | null> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const found = await readSample(context);
      if (!found) return null;
      const { sheets, sample, reports } = found;
      const sheet = sheets.find(({ id }) => id === sample.sheetId);
      return (
        (sheet && {
          sheet: sheet.name,
          address: dataAddress,
          answers: sheets.filter(({ id }) => reports.some((report) => report.sheetId === id)).map(({ name }) => name),
        }) ??
        null
      );
    }),
  );

/**
 * Removes the sample: its sheet, the sheets that answers about it were written to, and what was remembered of either;
 * the coach stands where she stood before. Three round trips.
 *
 * @returns identities of the sheets removed.
 */
export const removeTrySample = (): Promise<ReadonlySet<string>> =>
  trapHost(() =>
    Excel.run(async (context): Promise<ReadonlySet<string>> => {
      const found = await readSample(context);
      if (!found) return new Set();
      const { sample, sheets, reports } = found;
      const gone = new Set([sample.sheetId, ...reports.map(({ sheetId }) => sheetId)]);
      const stored = Object.fromEntries(
        [writtenReportsSetting, columnMapsSetting, marksSetting].map((key) => [
          key,
          context.workbook.settings.getItemOrNullObject(key).load("value"),
        ]),
      );
      await context.sync();

      for (const [key, setting] of Object.entries(stored)) {
        if (setting.isNullObject) continue;
        const left = withoutSheets(key, setting.value, gone);
        if (left === null) continue;
        if (left.isEmpty && !sample.settings.includes(key)) setting.delete();
        else context.workbook.settings.add(key, left.value);
      }
      context.workbook.settings.getItem(trySampleSetting).delete();
      const before = sheets.find(({ id }) => id === sample.before.sheetId);
      before?.activate();
      for (const sheet of sheets) if (gone.has(sheet.id)) sheet.delete();
      before?.getRange(sample.before.address).select();
      await context.sync();
      return gone;
    }),
  );

const dataAddress = areaAddress(headerRow, 0, tryRows.length + 1, tryHeadings.length);

function fill(sheet: Excel.Worksheet): void {
  const lines = sheet.getRange("A1:A2");
  lines.values = [[trySheet.title], [trySheet.text]];
  styleLines(lines);
  const data = sheet.getRange(dataAddress);
  data.values = [[...tryHeadings], ...tryRows.map((row) => [...row])];
  styleHeader(data.getRow(0));
  data.getColumn(0).format.columnWidth = 110;
  sheet.activate();
  data.select();
}

type Found = {
  readonly sample: TrySample;
  readonly sheets: readonly Excel.Worksheet[];
  /** Reports written about the sample. */
  readonly reports: readonly WrittenReport[];
};

async function readSample(context: Excel.RequestContext): Promise<Found | null> {
  const { worksheets, settings } = context.workbook;
  const setting = settings.getItemOrNullObject(trySampleSetting).load("value");
  const written = settings.getItemOrNullObject(writtenReportsSetting).load("value");
  worksheets.load("items/id,items/name");
  await context.sync();
  const sample = setting.isNullObject ? null : parseTrySample(setting.value);
  if (!sample) return null;
  const reports = (written.isNullObject ? null : parseWrittenReports(written.value))?.reports ?? {};
  return {
    sample,
    sheets: worksheets.items,
    reports: Object.entries(reports)
      .filter(([key]) => isAbout(key, sample.sheetId))
      .map(([, report]) => report),
  };
}

/** A report's key names the sheet it was read from: "asymmetry|{0001}|A4|". */
const isAbout = (key: string, sheetId: string): boolean => key.split("|")[1] === sheetId;

/** What a setting holds without all that belongs to some sheets; null where it cannot be read, and is left alone. */
function withoutSheets(
  key: string,
  stored: unknown,
  gone: ReadonlySet<string>,
): { readonly value: unknown; readonly isEmpty: boolean } | null {
  switch (key) {
    case writtenReportsSetting: {
      const written = parseWrittenReports(stored);
      return written && recordWithout(written, "reports", ([, { sheetId }]) => gone.has(sheetId));
    }
    case marksSetting: {
      const marked = parseMarks(stored);
      return marked && recordWithout(marked, "marks", ([, { sheetId }]) => gone.has(sheetId));
    }
    default: {
      const remembered = parseColumnMaps(stored);
      if (!remembered) return null;
      const maps = remembered.maps.filter(({ place }) => !gone.has(place.split("!")[0] ?? ""));
      return { value: { ...remembered, maps }, isEmpty: maps.length === 0 };
    }
  }
}

function recordWithout<Name extends string, Entry>(
  stored: { readonly [name in Name]: Readonly<Record<string, Entry>> },
  name: Name,
  isGone: (entry: [string, Entry]) => boolean,
) {
  const left = Object.entries<Entry>(stored[name]).filter((entry) => !isGone(entry));
  return { value: { ...stored, [name]: Object.fromEntries(left) }, isEmpty: left.length === 0 };
}
