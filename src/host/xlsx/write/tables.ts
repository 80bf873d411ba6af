import type { ITableJson } from "@univerjs/sheets-table";
import { freshLook, type TableLook } from "../../engine/tables";
import { rangeReference } from "../addresses";
import { fileFormula } from "./fileFormula";
import { counted, escaped, identityAttributes, main, part, tag } from "./markup";

/** One table of the file; `number` is unique in the workbook. */
export function tablePart(table: ITableJson, number: number, shownFormula: (formula: string) => string): Uint8Array {
  const look: TableLook = { ...freshLook, ...table.meta };
  const showTotals = look.showTotals === true;
  const { startRow, startColumn, endRow, endColumn } = table.range;
  const range = { startRow, startColumn, endRow, endColumn };
  const showHeader = table.options.showHeader !== false;
  const filterable = { ...range, endRow: showTotals ? endRow - 1 : endRow };
  const columns = table.columns.map(({ displayName, formula }, index) =>
    tag(
      "tableColumn",
      { id: index + 1, name: displayName.replace(/\n/g, "_x000a_") },
      formula ? tag("calculatedColumnFormula", {}, escaped(fileFormula(shownFormula(formula), table.name))) : "",
    ),
  );
  return part(
    tag(
      "table",
      {
        xmlns: main,
        ...identityAttributes(table.id),
        id: number,
        name: table.name,
        displayName: table.name,
        ref: rangeReference(range),
        headerRowCount: showHeader ? undefined : 0,
        totalsRowCount: showTotals ? 1 : undefined,
        totalsRowShown: showTotals ? undefined : 0,
      },
      [
        look.showFilterButton !== false && showHeader ? tag("autoFilter", { ref: rangeReference(filterable) }) : "",
        counted("tableColumns", columns),
        tag("tableStyleInfo", {
          name: look.style || undefined,
          showFirstColumn: look.highlightFirstColumn ? 1 : 0,
          showLastColumn: look.highlightLastColumn ? 1 : 0,
          showRowStripes: look.showBandedRows === false ? 0 : 1,
          showColumnStripes: look.showBandedColumns ? 1 : 0,
        }),
      ],
    ),
  );
}
