import type { ITableJson } from "@univerjs/sheets-table";
import { TableColumnDataTypeEnum } from "@univerjs/sheets-table";
import type { TableLook } from "../../engine/tables";
import { rangeOf } from "../addresses";
import { plainFormula } from "../formulas";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import type { Identities } from "./identities";

/** One table of the file. */
export function readTable(table: XmlElement, identities: Identities): ITableJson {
  const name = table.attributes.displayName ?? table.attributes.name ?? "Table";
  const columns = childrenOf(childOf(table, "tableColumns"), "tableColumn");
  const look = childOf(table, "tableStyleInfo");
  const range = rangeOf(table.attributes.ref ?? "A1");
  const showTotals = (numberOf(table, "totalsRowCount") ?? 0) > 0;
  const meta: TableLook = {
    style: look?.attributes.name ?? "",
    showBandedRows: truthOf(look, "showRowStripes"),
    showBandedColumns: truthOf(look, "showColumnStripes"),
    highlightFirstColumn: truthOf(look, "showFirstColumn"),
    highlightLastColumn: truthOf(look, "showLastColumn"),
    showFilterButton: childOf(table, "autoFilter") !== undefined,
    showTotals,
    isNew: false,
  };
  return {
    id: identities.of("tables", table.attributes.uid, name),
    name,
    range: {
      startRow: range.startRow,
      startColumn: range.startColumn,
      endRow: range.endRow,
      endColumn: range.endColumn,
    },
    options: {
      showHeader: numberOf(table, "headerRowCount") !== 0,
      showFooter: showTotals,
    },
    filters: { tableColumnFilterList: [] },
    columns: columns.map((column, index) => ({
      id: `column-${column.attributes.id ?? index + 1}`,
      displayName: lineBreaks(column.attributes.name ?? `Column${index + 1}`),
      dataType: TableColumnDataTypeEnum.None,
      formula: plainFormula(childOf(column, "calculatedColumnFormula")?.text ?? ""),
      meta: {},
      style: {},
    })),
    meta,
  };
}

/** A heading of several lines is written with `_x000a_` between them. */
const lineBreaks = (name: string) => name.replace(/_x000a_/gi, "\n");
