import type { Host } from "../../src/host";

const look = {
  address: true,
  format: {
    borders: {
      bottom: { style: true, weight: true, color: true },
      left: { style: true, weight: true, color: true },
      right: { style: true, weight: true, color: true },
      top: { style: true, weight: true, color: true },
    },
    fill: { color: true },
    font: { bold: true, color: true, italic: true, name: true, size: true },
    horizontalAlignment: true,
    indentLevel: true,
  },
} as const;

/**
 * Everything a coach can see or save of the workbook, as one text: cells with their formulas, formats and look, widths,
 * notes, tables, names, charts, what is frozen, settings. Two workbooks with the same image are the same.
 *
 * @param region cells of each sheet that are looked at: more than all that is written.
 */
export const workbookImage = (host: Host, region = "A1:H45"): Promise<string> =>
  Excel.run(async (context) => {
    const { worksheets, names, settings } = context.workbook;
    worksheets.load("items/id,items/name,items/visibility,items/showGridlines,items/tabColor");
    names.load("items/name,items/formula");
    settings.load("items/key,items/value");
    await context.sync();
    const sheets = worksheets.items.map((sheet) => {
      const cells = sheet.getRange(region).load("formulas,numberFormat");
      const rows = sheet.getRange(region).getRowProperties({ rowHidden: true, format: { rowHeight: true } });
      const columns = sheet.getRange(region).getColumnProperties({ columnHidden: true, format: { columnWidth: true } });
      const looks = sheet.getRange(region).getCellProperties(look as Excel.CellPropertiesLoadOptions);
      const tables = sheet.tables.load("items/id,items/name,items/style,items/showTotals,items/showBandedRows");
      const notes = sheet.notes.load("items/content");
      const frozen = sheet.freezePanes.getLocationOrNullObject().load("address");
      return { sheet, cells, rows, columns, looks, tables, notes, frozen };
    });
    await context.sync();
    const places = sheets.map(({ tables, notes }) => ({
      tables: tables.items.map((table) => table.getRange().load("address")),
      notes: notes.items.map((note) => note.getLocation().load("address")),
    }));
    await context.sync();
    return JSON.stringify(
      {
        sheets: sheets.map(({ sheet, cells, rows, columns, looks, tables, notes, frozen }, index) => ({
          sheet: sheet.toJSON(),
          formulas: cells.formulas,
          numberFormat: cells.numberFormat,
          rows: rows.value,
          columns: columns.value,
          looks: looks.value,
          tables: tables.items.map((table, at) => [table.toJSON(), places[index]!.tables[at]!.address]),
          notes: notes.items.map((note, at) => [places[index]!.notes[at]!.address, note.content]),
          frozen: frozen.isNullObject ? null : frozen.address,
        })),
        charts: host.charts.list(),
        names: names.items.map((name) => [name.name, name.formula]),
        settings: settings.items.map(({ key, value }) => [key, value]).sort(),
      },
      null,
      1,
    );
  });
