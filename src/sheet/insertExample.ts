import { say } from "../language/say";
import { areaAddress, quotedSheet } from "../reading/address";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";

/** How many cells the answer of a formula takes. */
export type AnswerSize = { readonly rows: number; readonly columns: number };

export type Inserted =
  | { readonly kind: "written"; readonly address: string; readonly deed: Deed }
  /** Nothing was written: cells that hold something, or a merged cell, a table or the edge of the sheet. */
  | { readonly kind: "inTheWay"; readonly what: "cells" | "merged" | "table" | "edge"; readonly address: string };

const sheetRows = 1_048_576;
const sheetColumns = 16_384;

/**
 * Writes an example into the active cell, where that cell and those the answer will spill into are empty; else writes
 * nothing and says what is in the way. Three round trips.
 */
export const insertExample = (formula: string, { rows, columns }: AnswerSize): Promise<Inserted> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Inserted> => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex,columnIndex,numberFormat");
      const sheet = cell.worksheet;
      sheet.load("id,name");
      await context.sync();
      const { rowIndex, columnIndex, numberFormat } = cell;
      const full = (address: string) => `${quotedSheet(sheet.name)}!${address}`;
      const address = areaAddress(rowIndex, columnIndex, rows, columns);
      const own = areaAddress(rowIndex, columnIndex, 1, 1);
      if (rowIndex + rows > sheetRows || columnIndex + columns > sheetColumns) {
        return { kind: "inTheWay", what: "edge", address: full(own) };
      }

      const area = sheet.getRangeByIndexes(rowIndex, columnIndex, rows, columns);
      area.load("formulas");
      const merged = area.getMergedAreasOrNullObject();
      merged.load("address");
      const tables = area.getTables(false);
      tables.load("items/name");
      await context.sync();
      const spills = rows * columns > 1;
      const taken = area.formulas.flatMap((row, r) =>
        row.flatMap((formula, c) => (formula === "" ? [] : [areaAddress(rowIndex + r, columnIndex + c, 1, 1)])),
      );
      if (taken.length > 0) return { kind: "inTheWay", what: "cells", address: full(shortList(taken)) };
      if (!merged.isNullObject) return { kind: "inTheWay", what: "merged", address: merged.address };
      // A table takes no formula that spills.
      if (spills && tables.items.length > 0) return { kind: "inTheWay", what: "table", address: tables.items[0]!.name };

      cell.numberFormat = [["General"]];
      cell.formulas = [[formula]];
      await context.sync();
      return {
        kind: "written",
        address: full(address),
        deed: {
          what: say`Wrote an example into ${full(own)}`,
          steps: [
            {
              kind: "restoreCells",
              sheetId: sheet.id,
              address: own,
              formulas: [[""]],
              numberFormat,
              written: [[formula]],
            },
          ],
        },
      };
    }),
  );

const shownAtMost = 5;

const shortList = (addresses: readonly string[]): string =>
  addresses.length <= shownAtMost
    ? addresses.join(", ")
    : say`${addresses.slice(0, shownAtMost).join(", ")} and ${addresses.length - shownAtMost} more`;
