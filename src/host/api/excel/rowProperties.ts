import type { Area } from "../../engine/area";
import { isRowHidden } from "../../engine/layout";
import { addressOf } from "../../engine/references";
import { notImplemented } from "../errors";

type Readable = Pick<Excel.RowProperties, "address" | "rowHidden" | "rowIndex">;

/** What `Range.getRowProperties` can tell of a row here. */
const readers: { readonly [Name in keyof Readable]-?: (row: Area) => Readable[Name] } = {
  address: addressOf,
  rowHidden: (row) => isRowHidden(row, row.row),
  rowIndex: (row) => row.row,
};

/** The wanted properties of each row (office/dev/add-ins/excel/excel-add-ins-cells: get and set cell properties). */
export function rowProperties(area: Area, wanted: Excel.RowPropertiesLoadOptions): Excel.RowProperties[] {
  const names = Object.entries(wanted).flatMap(([name, asked]) => (asked ? [name] : []));
  for (const name of names) if (!(name in readers)) throw notImplemented(`Range.getRowProperties: ${name}`);
  return Array.from({ length: area.rowCount }, (_, offset) => {
    const row = { ...area, row: area.row + offset, rowCount: 1 };
    return Object.fromEntries(names.map((name) => [name, readers[name as keyof Readable](row)]));
  });
}
