/** A cell with a formula. */
export type FormulaCell = {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly value: unknown;
  readonly numberFormat: unknown;
};

/** All formulas of a sheet that are looked for. */
export type SheetFormulas = { readonly sheet: Excel.Worksheet; readonly cells: readonly FormulaCell[] };

/**
 * The formulas of these sheets that are looked for, in one round trip whatever their number. The sheets have `id` and `name` loaded.
 */
export async function readFormulas(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  isLookedFor: (formula: string, value: unknown) => boolean,
): Promise<SheetFormulas[]> {
  const found = sheets.map((sheet) => {
    const cells = sheet.getRange().getSpecialCellsOrNullObject("Formulas");
    cells.load(
      "areas/items/formulas,areas/items/values,areas/items/numberFormat,areas/items/rowIndex,areas/items/columnIndex",
    );
    return { sheet, cells };
  });
  await context.sync();
  return found.map(({ sheet, cells }) => ({
    sheet,
    cells: (cells.isNullObject ? [] : cells.areas.items).flatMap((area) =>
      area.formulas.flatMap((row, r) =>
        row.flatMap((formula, c) => {
          const value = area.values[r]![c];
          if (typeof formula !== "string" || !formula.startsWith("=") || !isLookedFor(formula, value)) return [];
          const place = { row: area.rowIndex + r, column: area.columnIndex + c };
          return [{ ...place, formula, value, numberFormat: area.numberFormat[r]![c] }];
        }),
      ),
    ),
  }));
}
