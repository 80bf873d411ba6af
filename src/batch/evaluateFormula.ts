import type { Host } from "../host";
import { areaAddress, quotedSheet } from "../reading/address";
import { HostRefusal, trapHost } from "../sheet/hostRefusal";
import { BatchRefusal } from "./refusal";
import { sheetNames } from "./selectRange";

export type FormulaValue = number | string | boolean | FormulaError;

/** An error value, and why it is there. */
export type FormulaError = { readonly error: string; readonly message?: string };

/** What the errors of a spreadsheet mean, where a function does not say more. */
const meanings: Readonly<Record<string, string>> = {
  "#NAME?": "A function or a name in the formula is not known in this workbook.",
  "#REF!": "The formula refers to cells or a sheet that are not there.",
  "#DIV/0!": "Something is divided by zero or by an empty cell.",
  "#VALUE!": "An argument is of the wrong kind.",
  "#N/A": "There is no answer for these cells.",
  "#NUM!": "A number is outside what the function can take.",
  "#NULL!": "Two areas have no cell in common.",
  "#SPILL!": "There is no room for all the values.",
  "#CALC!": "The calculation gives an empty array.",
};

/**
 * The value of a formula in an open workbook, spilled values as rows. It is typed into a cell of the sheet beyond all
 * that stands there, so that references without a sheet mean that sheet, nothing is in the way of what spills, and no
 * whole column it reads holds the formula itself.
 *
 * @param sheet the sheet for references that name none; else the one the workbook opens on.
 */
export async function evaluateFormula(
  host: Host,
  formula: string,
  sheet?: string,
): Promise<FormulaValue | FormulaValue[][]> {
  const on = await sheetFor(host, sheet);
  const { row, column, isSpilled, values, types } = await calculate(
    host,
    formula.startsWith("=") ? formula : `=${formula}`,
    on,
  );
  const shown = values.map((cells, r) =>
    cells.map((value, c) => {
      if (types[r]![c] !== "Error") return value;
      return explained(value, host.errorMessageAt(`${quotedSheet(on)}!${areaAddress(row + r, column + c, 1, 1)}`));
    }),
  );
  return isSpilled ? shown : shown[0]![0]!;
}

/** Types a formula on a sheet and reads what it shows. */
async function calculate(host: Host, formula: string, sheet: string) {
  try {
    return await trapHost(() =>
      host.Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(sheet);
        const used = worksheet.getUsedRangeOrNullObject();
        used.load("rowIndex,columnIndex,rowCount,columnCount");
        await context.sync();
        const [row, column] = used.isNullObject
          ? [1, 1]
          : [used.rowIndex + used.rowCount + 1, used.columnIndex + used.columnCount + 1];
        const cell = worksheet.getRangeByIndexes(row, column, 1, 1);
        cell.numberFormat = [["General"]];
        cell.formulas = [[formula]];
        const spill = cell.getSpillingToRangeOrNullObject();
        cell.load("values,valueTypes");
        spill.load("values,valueTypes");
        await context.sync();
        const shown = spill.isNullObject ? cell : spill;
        return {
          row,
          column,
          isSpilled: !spill.isNullObject,
          values: shown.values,
          types: shown.valueTypes,
        };
      }),
    );
  } catch (error) {
    if (!(error instanceof HostRefusal)) throw error;
    throw new BatchRefusal(`The workbook does not take this formula: ${formula}`, [error.message]);
  }
}

function explained(value: unknown, why: string | null): FormulaError {
  const error = String(value);
  const message = why ?? meanings[error];
  return message === undefined ? { error } : { error, message };
}

async function sheetFor(host: Host, wished: string | undefined): Promise<string> {
  const names = await sheetNames(host);
  if (wished !== undefined) {
    const found = names.find((name) => name.toLowerCase() === wished.toLowerCase());
    if (found === undefined) {
      throw new BatchRefusal(`There is no sheet "${wished}" in it. Its sheets: ${names.join(", ")}.`);
    }
    return found;
  }
  return host.Excel.run(async (context) => {
    const active = context.workbook.worksheets.getActiveWorksheet();
    active.load("name");
    await context.sync();
    return active.name;
  });
}
