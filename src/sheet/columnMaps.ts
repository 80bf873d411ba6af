import type { ColumnMap } from "../reading/columns";
import { columnMapAt, columnMapsSetting, noColumnMaps, parseColumnMaps, withColumnMap } from "../store/columnMaps";
import { trapHost } from "./hostRefusal";

/**
 * How the coach had a place read last; null where nothing is remembered, or its headings have changed since. One round
 * trip.
 *
 * @param place sheet's identity and first cell, e.g. "{0001}!A3".
 */
export const recallColumnMap = (place: string, headings: readonly string[]): Promise<ColumnMap | null> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const stored = await readSetting(context);
      return stored === null ? null : columnMapAt(stored, place, headings);
    }),
  );

/**
 * Remembers in the workbook how a place is to be read. Two round trips. What a newer version of the add-in has written
 * is left alone; nothing is remembered then.
 */
export const rememberColumnMap = (place: string, headings: readonly string[], map: ColumnMap): Promise<void> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const stored = await readSetting(context);
      if (stored === null) return;
      context.workbook.settings.add(columnMapsSetting, withColumnMap(stored, place, headings, map));
      await context.sync();
    }),
  );

async function readSetting(context: Excel.RequestContext) {
  const setting = context.workbook.settings.getItemOrNullObject(columnMapsSetting);
  setting.load("value");
  await context.sync();
  return setting.isNullObject ? noColumnMaps : parseColumnMaps(setting.value);
}
