import type { ITableJson } from "@univerjs/sheets-table";
import { TableColumnDataTypeEnum } from "@univerjs/sheets-table";
import { rangeOf } from "../addresses";
import { plainFormula } from "../formulas";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";

/** What a table has in the file beyond what the engine knows of it; kept so that saving gives it back. */
export type TableMeta = {
  /** Name of the table's style in the file, e.g. "TableStyleMedium2"; none for a plain table. */
  readonly style?: string;
  readonly bandedRows: boolean;
  readonly bandedColumns: boolean;
  readonly firstColumn: boolean;
  readonly lastColumn: boolean;
  readonly filterButtons: boolean;
};

export function readTable(table: XmlElement): ITableJson {
  const columns = childrenOf(childOf(table, "tableColumns"), "tableColumn");
  const look = childOf(table, "tableStyleInfo");
  const range = rangeOf(table.attributes.ref ?? "A1");
  const style = look?.attributes.name;
  const meta: TableMeta = {
    ...(style && { style }),
    bandedRows: truthOf(look, "showRowStripes"),
    bandedColumns: truthOf(look, "showColumnStripes"),
    firstColumn: truthOf(look, "showFirstColumn"),
    lastColumn: truthOf(look, "showLastColumn"),
    filterButtons: childOf(table, "autoFilter") !== undefined,
  };
  return {
    id: `table-${table.attributes.id ?? table.attributes.name}`,
    name: table.attributes.displayName ?? table.attributes.name ?? "Table",
    range: {
      startRow: range.startRow,
      startColumn: range.startColumn,
      endRow: range.endRow,
      endColumn: range.endColumn,
    },
    options: {
      showHeader: numberOf(table, "headerRowCount") !== 0,
      showFooter: (numberOf(table, "totalsRowCount") ?? 0) > 0,
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
