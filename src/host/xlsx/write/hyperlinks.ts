import type { ICellData, IWorksheetData } from "@univerjs/core";
import type { CellMarks, Hyperlink } from "../../engine/cellMarks";
import { cellAddress } from "../addresses";
import { tag } from "./markup";

/** The links of a sheet's cells. `linkTo` adds an address outside the file to the sheet's links and gives its id. */
export function hyperlinksMarkup(sheet: Partial<IWorksheetData>, linkTo: (address: string) => string): string {
  const cells = (sheet.cellData ?? {}) as Record<string, Record<string, ICellData>>;
  const links = Object.entries(cells).flatMap(([row, line]) =>
    Object.entries(line).flatMap(([column, cell]) => {
      const { hyperlink } = (cell?.custom ?? {}) as CellMarks;
      return hyperlink ? [linkTag(cellAddress(Number(row), Number(column)), hyperlink, linkTo)] : [];
    }),
  );
  return links.length > 0 ? tag("hyperlinks", {}, links) : "";
}

const linkTag = (ref: string, link: Hyperlink, linkTo: (address: string) => string): string =>
  tag("hyperlink", {
    ref,
    "r:id": link.address ? linkTo(link.address) : undefined,
    location: link.documentReference,
    tooltip: link.screenTip,
  });
